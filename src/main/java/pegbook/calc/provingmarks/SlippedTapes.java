package pegbook.calc.provingmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import pegbook.figures.Swings;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.geometry.Swing;
import pegbook.measure.Length;

/**
 * Sets the whole figure out with one wrong tape. The baseline's first mark and its direction are
 * right; every other mark is where its two tapes cross, so that a wrong mark puts those wrong that
 * are taped from it.
 */
final class SlippedTapes {
  private final CheckLines lines;
  private final Swings swings;
  private final double onLine;
  private final Tape slipped;
  private final double amount;
  private final Map<String, Integer> indices = new TreeMap<>();
  private final Map<Integer, Point> set = new TreeMap<>();

  /** A tape of the setting out. */
  record Tape(String from, String to) {}

  private SlippedTapes(
      CheckLines lines, Swings swings, double onLine, Tape slipped, double amount) {
    this.lines = lines;
    this.swings = swings;
    this.onLine = onLine;
    this.slipped = slipped;
    this.amount = amount;
    for (int i = 0; i < lines.marks(); i++) {
      indices.put(lines.mark(i).id(), i);
    }
  }

  /** Every tape by which the marks are set out. */
  static List<Tape> tapes(CheckLines lines, Swings swings, double onLine) {
    SlippedTapes plain = new SlippedTapes(lines, swings, onLine, new Tape("", ""), 0);
    List<Tape> tapes = new ArrayList<>();
    tapes.add(new Tape(swings.first(), swings.second()));
    for (int i = 0; i < lines.marks(); i++) {
      String mark = lines.mark(i).id();
      if (plain.isEnd(mark)) {
        continue;
      }
      Optional<Swings.OwnPair> own = swings.pairOf(mark);
      tapes.add(new Tape(own.map(Swings.OwnPair::first).orElse(swings.first()), mark));
      if (own.isPresent() || !plain.isOnLine(i)) {
        tapes.add(new Tape(own.map(Swings.OwnPair::second).orElse(swings.second()), mark));
      }
    }
    return tapes;
  }

  /**
   * Where marks are wrong when one tape is too long by an amount; nothing when the tapes of a mark
   * do not meet, which nobody overlooks.
   *
   * @param amount metres; negative when it is too short
   */
  static Optional<Map<Integer, Point>> places(
      CheckLines lines, Swings swings, double onLine, Tape slipped, double amount) {
    return new SlippedTapes(lines, swings, onLine, slipped, amount).wrong();
  }

  private boolean isEnd(String mark) {
    return mark.equals(swings.first()) || mark.equals(swings.second());
  }

  private boolean isOnLine(int mark) {
    return Math.abs(planned().offsetMetres(lines.at(mark))) <= onLine;
  }

  private int index(String mark) {
    Integer index = indices.get(mark);
    if (index == null) {
      throw new IllegalArgumentException("no mark " + mark);
    }
    return index;
  }

  private Segment planned() {
    return new Segment(lines.at(index(swings.first())), lines.at(index(swings.second())));
  }

  private double tape(String from, String to) {
    double metres = lines.at(index(from)).distanceTo(lines.at(index(to))).metres();
    return slipped.equals(new Tape(from, to)) ? metres + amount : metres;
  }

  private Optional<Map<Integer, Point>> wrong() {
    Segment planned = planned();
    set.put(index(swings.first()), planned.from());
    double base = tape(swings.first(), swings.second());
    if (base <= 0) {
      return Optional.empty();
    }
    set.put(index(swings.second()), planned.at(base, 0));
    Set<String> own = new TreeSet<>();
    swings.ownPairs().forEach(pair -> own.add(pair.mark()));
    for (int i = 0; i < lines.marks(); i++) {
      String mark = lines.mark(i).id();
      if (!isEnd(mark) && !own.contains(mark) && !setFromBaseline(i, mark)) {
        return Optional.empty();
      }
    }
    for (Swings.OwnPair pair : swings.ownPairs()) {
      if (!swung(pair.mark(), pair.first(), pair.second())) {
        return Optional.empty();
      }
    }
    set.entrySet()
        .removeIf(place -> lines.at(place.getKey()).distanceTo(place.getValue()).metres() < 1e-9);
    return Optional.of(set);
  }

  private boolean setFromBaseline(int index, String mark) {
    if (!isOnLine(index)) {
      return swung(mark, swings.first(), swings.second());
    }
    double along = planned().alongMetres(lines.at(index));
    double tape = tape(swings.first(), mark);
    set.put(
        index, planned().at(Math.copySign(tape, along), planned().offsetMetres(lines.at(index))));
    return tape > 0;
  }

  private boolean swung(String mark, String first, String second) {
    Point one = placed(first);
    Point other = placed(second);
    double fromFirst = tape(first, mark);
    double fromSecond = tape(second, mark);
    if (fromFirst <= 0 || fromSecond <= 0) {
      return false;
    }
    Swing swing = Swing.of(new Segment(one, other), new Length(fromFirst), new Length(fromSecond));
    Segment.Side side =
        new Segment(lines.at(index(first)), lines.at(index(second))).sideOf(lines.at(index(mark)));
    if (swing instanceof Swing.Crossing crossing && side != Segment.Side.ON) {
      set.put(index(mark), crossing.on(side));
      return true;
    }
    return false;
  }

  private Point placed(String mark) {
    Point place = set.get(index(mark));
    if (place == null) {
      throw new IllegalArgumentException(mark + " is not set out yet");
    }
    return place;
  }
}

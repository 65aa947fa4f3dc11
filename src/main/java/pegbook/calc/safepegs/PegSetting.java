package pegbook.calc.safepegs;

import java.util.List;
import java.util.Optional;
import pegbook.calc.safepegs.SafePegs.Peg;
import pegbook.calc.safepegs.SafePegs.Setting;
import pegbook.calc.safepegs.SafePegs.Tape;
import pegbook.figures.SafePeg;
import pegbook.geometry.Compass;
import pegbook.geometry.Segment;
import pegbook.measure.Angle;

/** Says how each peg is set while the marks are there. */
final class PegSetting {
  private static final Angle QUARTER = Angle.ofDegrees(90);

  private final PegSite site;
  private final List<Strung> strings;
  private final List<PegDraft> drafts;
  private final TapedDistances distances;

  /**
   * Takes the pegs in the order of their names.
   *
   * @param drafts K1 first
   * @param distances knows the names of marks and pegs
   */
  PegSetting(PegSite site, List<Strung> strings, List<PegDraft> drafts, TapedDistances distances) {
    this.site = site;
    this.strings = strings;
    this.drafts = drafts;
    this.distances = distances;
  }

  static String name(int peg) {
    return "K" + (peg + 1);
  }

  Peg peg(int number) {
    PegDraft draft = drafts.get(number);
    SafePeg peg = new SafePeg(name(number), draft.at(), draft.taped());
    if (draft.swing().isPresent()) {
      PegSwing swing = draft.swing().get();
      return new Peg(peg, swung(peg.id(), swing), swing.check(site).map(mark -> check(peg, mark)));
    }
    Strung.End end = draft.ends().get(0);
    Setting.InLine one = inLine(peg.id(), end);
    Setting setting =
        draft.ends().size() == 1
            ? one
            : new Setting.Meeting(one, inLine(peg.id(), draft.ends().get(1)));
    return new Peg(peg, setting, check(draft, end).map(mark -> check(peg, mark)));
  }

  private Tape tape(String peg, int mark) {
    String name = site.names().get(mark);
    return new Tape(name, distances.set(peg, name));
  }

  private Tape check(SafePeg peg, int mark) {
    return tape(peg.id(), mark);
  }

  private Setting.Swing swung(String peg, PegSwing swing) {
    Segment line = new Segment(site.marks().get(swing.first()), site.marks().get(swing.second()));
    boolean left = line.offsetMetres(swing.at()) > 0;
    return new Setting.Swing(
        tape(peg, swing.first()), tape(peg, swing.second()), left, side(line, left));
  }

  /** The wind towards which a side of a line lies. */
  static Compass side(Segment line, boolean left) {
    Angle azimuth = line.from().azimuthTo(line.to());
    return Compass.of(left ? azimuth.minus(QUARTER) : azimuth.plus(QUARTER));
  }

  private Setting.InLine inLine(String peg, Strung.End end) {
    MarkLine line = strings.get(end.string()).line();
    String from =
        line.isShared()
            ? site.names().get(line.end(!end.last()))
            : pegAt(new Strung.End(end.string(), !end.last()));
    return new Setting.InLine(from, tape(peg, line.end(end.last())));
  }

  /** The name of the peg that carries an end of a string. */
  String pegAt(Strung.End end) {
    for (int peg = 0; peg < drafts.size(); peg++) {
      if (drafts.get(peg).ends().contains(end)) {
        return name(peg);
      }
    }
    throw new IllegalArgumentException("no peg carries an end of string " + end.string());
  }

  /** A mark off the peg's lines, whose tape shows a peg that is not far enough out. */
  private Optional<Integer> check(PegDraft draft, Strung.End end) {
    List<List<Integer>> on =
        draft.ends().stream().map(one -> strings.get(one.string()).line().marks()).toList();
    int past = strings.get(end.string()).line().end(end.last());
    return PegSwing.check(
        site,
        draft.at(),
        List.of(past),
        mark -> on.stream().noneMatch(marks -> marks.contains(mark)));
  }
}

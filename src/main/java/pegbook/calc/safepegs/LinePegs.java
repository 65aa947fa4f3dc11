package pegbook.calc.safepegs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.geometry.Point;
import pegbook.geometry.Segment;
import pegbook.measure.Rounding;

/**
 * The pegs that strings are tied to. Where two strings, drawn out, cross outside the figure, one
 * peg carries both.
 */
final class LinePegs {
  /** A shared peg may stand so much further out than one of its own. */
  private static final double FURTHER_METRES = 3;

  private final PegSite site;
  private final List<Strung> strings;
  private final List<Carrier> carriers = new ArrayList<>();
  private final List<Strung.End> free = new ArrayList<>();

  /** A peg and the ends of strings that it carries. */
  record Carrier(Point at, List<Strung.End> ends) {
    Carrier {
      ends = List.copyOf(ends);
    }
  }

  /** Two ends that can share a peg. */
  private record Meeting(
      Strung.End one, double oneMetres, Strung.End other, double otherMetres, Point at) {
    double metres() {
      return oneMetres + otherMetres;
    }
  }

  private LinePegs(PegSite site, List<Strung> strings) {
    this.site = site;
    this.strings = new ArrayList<>(strings);
    for (int i = 0; i < strings.size(); i++) {
      free.add(new Strung.End(i, false));
      free.add(new Strung.End(i, true));
    }
  }

  static LinePegs of(PegSite site, List<Strung> strings) {
    LinePegs pegs = new LinePegs(site, strings);
    pegs.share();
    for (Strung.End end : List.copyOf(pegs.free)) {
      pegs.carriers.add(new Carrier(pegs.own(end), List.of(end)));
    }
    return pegs;
  }

  /** The strings as they now end. */
  List<Strung> strings() {
    return List.copyOf(strings);
  }

  List<Carrier> carriers() {
    return List.copyOf(carriers);
  }

  private Point own(Strung.End end) {
    Strung string = strings.get(end.string());
    return string.line().past(end.last(), site.marks(), string.pastMetres(end.last()));
  }

  private void share() {
    List<Meeting> meetings = new ArrayList<>();
    for (int i = 0; i < free.size(); i++) {
      for (int j = i + 1; j < free.size(); j++) {
        meeting(free.get(i), free.get(j)).ifPresent(meetings::add);
      }
    }
    meetings.sort(
        Comparator.comparingLong(meeting -> Rounding.NEAREST.steps(meeting.metres(), 1e-4)));
    meetings.forEach(this::take);
  }

  private Optional<Meeting> meeting(Strung.End one, Strung.End other) {
    if (one.string() == other.string() || !isShared(one) || !isShared(other)) {
      return Optional.empty();
    }
    Segment first = strings.get(one.string()).line().axis();
    Segment second = strings.get(other.string()).line().axis();
    double before = first.offsetMetres(second.from());
    double after = first.offsetMetres(second.to());
    if (Math.abs(before - after) < 0.2 * second.length().metres()) {
      return Optional.empty();
    }
    Point at = second.at(second.length().metres() * before / (before - after), 0);
    double onePast = past(one, at);
    double otherPast = past(other, at);
    return isNear(one, onePast) && isNear(other, otherPast) && site.ground().isFree(at)
        ? Optional.of(new Meeting(one, onePast, other, otherPast, at))
        : Optional.empty();
  }

  /** A string over one mark alone is set from its own first peg, and shares none. */
  private boolean isShared(Strung.End end) {
    return strings.get(end.string()).line().isShared();
  }

  private double past(Strung.End end, Point at) {
    MarkLine line = strings.get(end.string()).line();
    double along = line.alongMetres(at) - line.alongMetres(site.marks().get(line.end(end.last())));
    return end.last() ? along : -along;
  }

  private boolean isNear(Strung.End end, double metres) {
    Strung string = strings.get(end.string());
    double hole =
        site.holeRadiusMetres(string.line().end(end.last())) + site.rules().hole().metres();
    return metres >= hole && metres <= string.pastMetres(end.last()) + FURTHER_METRES;
  }

  private void take(Meeting meeting) {
    if (!free.contains(meeting.one()) || !free.contains(meeting.other())) {
      return;
    }
    Strung one = drawnOut(meeting.one(), meeting.oneMetres());
    Strung other = drawnOut(meeting.other(), meeting.otherMetres());
    Strung.Finder finder = new Strung.Finder(site);
    if (finder.isClear(one) && finder.isClear(other)) {
      strings.set(meeting.one().string(), one);
      strings.set(meeting.other().string(), other);
      free.remove(meeting.one());
      free.remove(meeting.other());
      carriers.add(new Carrier(meeting.at(), List.of(meeting.one(), meeting.other())));
    }
  }

  private Strung drawnOut(Strung.End end, double metres) {
    Strung string = strings.get(end.string());
    return end.last()
        ? new Strung(string.line(), string.before(), metres)
        : new Strung(string.line(), metres, string.after());
  }
}

package pegbook.geometry;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pegbook.measure.Length;

/**
 * The shortest way from one thing to another.
 *
 * @param from where it leaves
 * @param to where it arrives; the same place when the two touch or cross
 */
public record Gap(Point from, Point to) {

  public Length length() {
    return from.distanceTo(to);
  }

  /**
   * From a place to the nearest of some lines.
   *
   * @throws java.util.NoSuchElementException when there is no line
   */
  public static Gap between(Point point, List<Segment> lines) {
    return shortest(lines.stream().map(line -> new Gap(point, line.nearest(point))));
  }

  /**
   * From one row of lines to another.
   *
   * @throws java.util.NoSuchElementException when one of them is empty
   */
  public static Gap between(List<Segment> some, List<Segment> others) {
    return shortest(
        some.stream().flatMap(one -> others.stream().flatMap(other -> ways(one, other))));
  }

  /** Two stretches that do not cross are nearest at an end of one of them. */
  private static Stream<Gap> ways(Segment one, Segment other) {
    return Stream.concat(
        crossing(one, other),
        Stream.of(
            new Gap(one.from(), other.nearest(one.from())),
            new Gap(one.to(), other.nearest(one.to())),
            new Gap(one.nearest(other.from()), other.from()),
            new Gap(one.nearest(other.to()), other.to())));
  }

  private static Stream<Gap> crossing(Segment one, Segment other) {
    double before = one.offsetMetres(other.from());
    double after = one.offsetMetres(other.to());
    boolean otherSpans = before * after < 0;
    boolean oneSpans = other.offsetMetres(one.from()) * other.offsetMetres(one.to()) < 0;
    if (!otherSpans || !oneSpans) {
      return Stream.empty();
    }
    Point at = other.at(other.length().metres() * before / (before - after), 0);
    return Stream.of(new Gap(at, at));
  }

  private static Gap shortest(Stream<Gap> gaps) {
    return gaps.min(Comparator.comparing(Gap::length)).orElseThrow();
  }
}

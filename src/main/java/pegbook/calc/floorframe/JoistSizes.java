package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.floorframe.FloorFrame.JoistSize;
import pegbook.calc.floorframe.FloorFrame.Limit;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.job.Frame;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.Rounding;
import pegbook.published.TimberFactor;
import pegbook.published.TimberSize;

/**
 * Holds sizes of joists against the longest span, from middle to middle of the beams, which is more
 * than the clear span that tables name; and their overhang against a person at its end.
 *
 * @param sizes those that the timber's table has
 * @param chosen the smallest that is enough, where one is
 * @param isOverhangLong no size's overhang is enough
 */
record JoistSizes(
    List<JoistSize> sizes,
    Optional<TimberSize> chosen,
    boolean isOverhangLong,
    List<Working> workings) {
  /** A joist lies on a beam with so much of its length (DCA 6; IRC R507.6.1). */
  private static final Length ON_BEAM = Length.ofInches(1.5);

  /** Half a beam of two plies: the overhang is measured from its side. */
  private static final Length BESIDE_BEAM = Length.ofInches(1.5);

  /** What DCA 6 takes off an overhang by sag. */
  private static final Length TAKEN_OFF = Length.ofInches(3);

  /** Loads that sizes are held to. */
  record Loads(Pressure bending, Pressure moving, Pressure whole) {}

  static JoistSizes of(Job job, Frame frame, JoistLayout layout, Loads loads) {
    return new Search(job, frame, layout, loads).sizes();
  }

  /** A size with what it allows. */
  private record Held(
      TimberSize size, Length allowed, Limit limit, boolean isEnough, List<Working> workings) {}

  /** Looks through the sizes. */
  private record Search(Job job, Frame frame, JoistLayout layout, Loads loads) {
    JoistSizes sizes() {
      List<Held> held = new ArrayList<>();
      for (TimberSize size : TimberSize.joists(job.heading().units())) {
        strength(size).map(strength -> hold(size, strength)).ifPresent(held::add);
      }
      Optional<Held> chosen = held.stream().filter(Held::isEnough).findFirst();
      boolean spans = held.stream().anyMatch(each -> !each.allowed().isLessThan(needed()));
      List<Working> workings = new ArrayList<>();
      Held shown = chosen.orElse(held.get(held.size() - 1));
      held.stream()
          .filter(each -> each.equals(shown) || isBeside(held, each, shown))
          .forEach(each -> workings.addAll(each.workings()));
      return new JoistSizes(
          held.stream()
              .map(
                  each ->
                      new JoistSize(
                          each.size().size(),
                          each.size().depth(),
                          each.allowed().setTo(job.layout().tape().division(), Rounding.DOWN),
                          each.limit(),
                          chosen.filter(each::equals).isPresent()))
              .toList(),
          chosen.map(Held::size),
          chosen.isEmpty() && spans,
          workings);
    }

    /** The next smaller one is worked too, to show that it is not enough. */
    private static boolean isBeside(List<Held> held, Held each, Held shown) {
      return held.indexOf(each) == held.indexOf(shown) - 1;
    }

    private Optional<Strength> strength(TimberSize size) {
      return Strength.of(
          frame,
          job.heading().units(),
          size.size(),
          size.depth(),
          TimberFactor.find("repetitive").value());
    }

    private Length needed() {
      return new Length(layout.longestSpan());
    }

    private Held hold(TimberSize size, Strength strength) {
      FloorFrameFormulas formulas = new FloorFrameFormulas(job.heading().units());
      List<Working> workings = new ArrayList<>(strength.workings());
      Count one = new Count(1);
      Length spacing = frame.joistSpacing();
      List<Working> spans =
          List.of(
              work(
                  formulas.bendingSpan(),
                  size,
                  strength.bending(),
                  one,
                  size.width(),
                  size.depth(),
                  loads.bending(),
                  spacing),
              work(
                  formulas.deflectionSpan(),
                  size,
                  strength.stiffness(),
                  one,
                  size.width(),
                  size.depth(),
                  loads.moving(),
                  spacing),
              work(
                  formulas.shearSpan(),
                  size,
                  strength.shear(),
                  one,
                  size.width(),
                  size.depth(),
                  loads.bending(),
                  spacing),
              work(
                  formulas.bearingSpan(),
                  size,
                  strength.bearing(),
                  one,
                  size.width(),
                  ON_BEAM,
                  loads.whole(),
                  spacing));
      workings.addAll(spans);
      int least = 0;
      for (int i = 1; i < spans.size(); i++) {
        least = spans.get(i).si() < spans.get(least).si() ? i : least;
      }
      Length allowed = spans.get(least).asLength();
      Optional<Working> overhang = overhang(size, strength);
      overhang.ifPresent(workings::add);
      boolean enough =
          !allowed.isLessThan(needed().times(1 - 1e-9))
              && overhang
                  .map(Working::asLength)
                  .filter(most -> Overhang.longest(layout).isMoreThan(most.minus(TAKEN_OFF)))
                  .isEmpty();
      return new Held(size, allowed, Limit.IN_ORDER.get(least), enough, workings);
    }

    /** Of the joist with the longest one. */
    private Optional<Working> overhang(TimberSize size, Strength strength) {
      return Overhang.worst(layout)
          .map(
              worst ->
                  work(
                      new FloorFrameFormulas(job.heading().units()).overhang(),
                      size,
                      strength.stiffness(),
                      size.width(),
                      size.depth(),
                      new Length(worst.span())));
    }

    private static Working work(Formula formula, TimberSize size, Quantity... quantities) {
      return Working.of(formula, size.size(), quantities);
    }
  }

  /** An end of a joist that hangs over its last beam. */
  record Overhang(double length, double span) {
    /** All ends of joists that no beam lies under. */
    static List<Overhang> all(JoistLayout layout) {
      List<Overhang> all = new ArrayList<>();
      for (Joist joist : layout.joists()) {
        List<Node> nodes = joist.nodes();
        int last = nodes.size() - 1;
        if (last > 0 && !joist.isOnBeam()) {
          double first = nodes.get(1).x() - nodes.get(0).x();
          double second = nodes.get(last).x() - nodes.get(last - 1).x();
          all.add(new Overhang(nodes.get(0).x() - joist.start(), first));
          all.add(new Overhang(joist.end() - nodes.get(last).x(), second));
        }
      }
      return all;
    }

    static Optional<Overhang> worst(JoistLayout layout) {
      return all(layout).stream()
          .max(Comparator.comparingDouble(Overhang::length).thenComparingDouble(Overhang::span));
    }

    /** The longest, from the side of a beam. */
    static Length longest(JoistLayout layout) {
      return worst(layout)
          .map(worst -> new Length(worst.length()).minus(BESIDE_BEAM))
          .orElse(Length.ZERO);
    }
  }
}

package pegbook.calc.powerline;

import java.util.List;
import java.util.Optional;
import pegbook.figures.CutPiece;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Task;
import pegbook.figures.Working;
import pegbook.geometry.Compass;
import pegbook.geometry.Point;
import pegbook.job.Power;
import pegbook.measure.Current;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Voltage;
import pegbook.measure.Volume;
import pegbook.published.Citation;

/**
 * The power line; none where the job has no power.
 *
 * @param line route, conductors, trench
 * @param sources what the tables on its sheet are from
 */
public record PowerLine(
    Optional<Line> line,
    List<Finding> findings,
    List<Working> workings,
    List<Need> needs,
    List<Task> tasks,
    List<Citation> sources)
    implements Result {
  public PowerLine {
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
    tasks = List.copyOf(tasks);
    sources = List.copyOf(sources);
  }

  /** Straight pipe for the cut plan; none where nothing is piped. */
  public List<CutPiece> pieces() {
    return line.stream()
        .flatMap(some -> some.pipes().stream())
        .flatMap(run -> run.pieces().stream())
        .toList();
  }

  /**
   * Route, conductors, trench and pipes of a line.
   *
   * @param pipes the pipe of the power conductors and that of the data cable, as far as there are
   *     any
   */
  public record Line(Route route, Conductors conductors, Trench trench, List<PipeRun> pipes) {
    public Line {
      pipes = List.copyOf(pipes);
    }
  }

  /**
   * A pipe from end to end.
   *
   * @param size as the stock names it
   * @param pieces straight ones to cut
   * @param lay length of pipe in which the legs are laid
   * @param riser straight pipe up at an end
   * @param over so far it comes up over the ground
   * @param ends places at which it goes up
   * @param bends bought bent: one for each end that goes up and each corner
   * @param couplings one for each joint from end to end
   */
  public record PipeRun(
      String size,
      List<CutPiece> pieces,
      Length lay,
      Length riser,
      Length over,
      List<String> ends,
      int bends,
      int couplings) {
    public PipeRun {
      pieces = List.copyOf(pieces);
      ends = List.copyOf(ends);
    }

    /** How many straight pieces. */
    public int count() {
      return pieces.stream().mapToInt(CutPiece::count).sum();
    }
  }

  /**
   * Where it goes.
   *
   * @param legs straight stretches, from the supply on
   * @param length of the trench
   * @param oneWay length of a conductor, its ways up and its slack included
   */
  public record Route(List<Leg> legs, Length length, Length oneWay) {
    public Route {
      legs = List.copyOf(legs);
    }

    /** Its places in order: R1 and so on. */
    public List<Point> places() {
      List<Point> places = new java.util.ArrayList<>(List.of(legs.get(0).start()));
      legs.forEach(leg -> places.add(leg.end()));
      return places;
    }
  }

  /**
   * A straight stretch.
   *
   * @param from label of its beginning, such as "R1"
   * @param to label of its end; the pier's name on the last one to a pier
   * @param fromName what the job calls its beginning
   * @param toName what the job calls its end
   * @param toPier true where it runs under the floor to a pier
   */
  public record Leg(
      String from,
      String to,
      Optional<String> fromName,
      Optional<String> toName,
      Point start,
      Point end,
      Length length,
      Compass towards,
      boolean toPier) {}

  /**
   * What carries the current.
   *
   * @param sizes every listed size
   * @param chosen the smallest that bears the breaker and keeps the drop, where one does
   * @param supplies the same load fed with a higher voltage
   * @param allowed share of the voltage that may be lost
   * @param celsius rating of the terminals by which ampacities were read; 0: the table has one
   */
  public record Conductors(
      List<Size> sizes,
      Optional<Chosen> chosen,
      List<Supplied> supplies,
      Ratio allowed,
      int celsius) {
    public Conductors {
      sizes = List.copyOf(sizes);
      supplies = List.copyOf(supplies);
    }
  }

  /**
   * A size in the table of sizes.
   *
   * @param name such as "12 AWG" or "2.5 mm²"
   * @param allowed whether the job takes it
   */
  public record Size(
      String name, Optional<Metal> copper, Optional<Metal> aluminium, boolean allowed) {
    /** Of a metal. */
    public Optional<Metal> of(Power.Metal metal) {
      return metal == Power.Metal.ALUMINIUM ? aluminium : copper;
    }
  }

  /**
   * A size in one metal.
   *
   * @param amperes it may carry
   * @param breaker largest breaker over a small size, amperes
   * @param bears whether it may lie behind the job's breaker
   */
  public record Metal(
      double amperes,
      Optional<Double> breaker,
      boolean bears,
      Optional<Drop> stranded,
      Optional<Drop> solid) {
    /** Of a make. */
    public Optional<Drop> of(Power.Strands strands) {
      return strands == Power.Strands.SOLID ? solid : stranded;
    }
  }

  /** Voltage lost on the way, its share of the supply's, whether that is allowed. */
  public record Drop(Voltage lost, Ratio share, boolean kept) {}

  /**
   * The conductors that were chosen.
   *
   * @param size name of their size
   * @param running drop with the running current
   * @param full drop with all that the breaker lets through
   * @param loaded how many of them, without the one that grounds
   * @param earth size of the one that grounds equipment
   * @param bearing smallest size that bears the breaker, whatever is lost
   */
  public record Chosen(
      String size, Drop running, Drop full, int loaded, String earth, String bearing) {}

  /**
   * The load fed with another voltage.
   *
   * @param threePhase true between three conductors that are loaded alike
   * @param drop in the chosen conductors, where there are any
   * @param smallest size that would do
   */
  public record Supplied(
      Voltage voltage,
      boolean threePhase,
      Current current,
      Optional<Drop> drop,
      Optional<String> smallest) {}

  /**
   * What lies in the trench.
   *
   * @param name trade size or diameter; empty for a cable
   * @param filled area of the conductors over that of the inside; empty where it is not counted
   * @param mayFill the most that may be filled
   * @param stock name of its size among what is cut; empty for a cable
   */
  public record Pipe(
      String name,
      Length inside,
      Length outside,
      Optional<Ratio> filled,
      Ratio mayFill,
      String stock) {}

  /**
   * The trench.
   *
   * @param stretches by what lies over them: T1 and so on
   * @param pipe that holds the power conductors, or the cable itself
   * @param data pipe of the data cable, where one goes along
   * @param width across the bottom
   * @param bedding sand under the pipe and over it
   * @param apart ground kept between power and data
   * @param tapeDepth where the warning tape lies in the first stretch
   * @param bank soil in the ground
   * @param loose the same once dug
   * @param sand filled round the pipe
   * @param over loose soil that does not go back
   */
  public record Trench(
      List<Stretch> stretches,
      Pipe pipe,
      Optional<Pipe> data,
      Length width,
      Length bedding,
      Length apart,
      Length tapeDepth,
      Volume bank,
      Volume loose,
      Volume sand,
      Volume over) {
    public Trench {
      stretches = List.copyOf(stretches);
    }

    /** Depth of its deepest stretch. */
    public Length deepest() {
      return stretches.stream().map(Stretch::depth).reduce(Length::max).orElseThrow();
    }

    /** The stretch that most of the route is like. */
    public Stretch main() {
      return stretches.get(0);
    }
  }

  /** Which rule decided a cover. */
  public enum Rule {
    CODE,
    AUTHORITY,
    HABIT
  }

  /**
   * A stretch of the trench.
   *
   * @param label T1 and so on
   * @param under what lies over it; nothing for open ground
   * @param cover from the ground to the top of pipe or cable
   * @param depth from the ground to the bare bottom
   */
  public record Stretch(
      String label,
      Optional<Power.Cover> under,
      Length length,
      Length cover,
      Length depth,
      Rule rule) {}
}

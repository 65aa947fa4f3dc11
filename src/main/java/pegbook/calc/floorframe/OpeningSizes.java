package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.floorframe.LoadPath.At;
import pegbook.calc.floorframe.LoadPath.Header;
import pegbook.calc.floorframe.LoadPath.Trimmer;
import pegbook.figures.Finding;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.job.Frame;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.measure.Ratio;
import pegbook.published.TimberSize;

/**
 * Doubled joists beside openings and doubled headers, held against what hangs on them in bending,
 * shear and sag. Each load stands where it does most, so no figure is smaller than the true one.
 *
 * @param findings those that are not enough
 * @param workings the steps
 */
record OpeningSizes(List<Finding> findings, List<Working> workings) {
  private static final Count PLIES = new Count(2);

  OpeningSizes {
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
  }

  static OpeningSizes of(
      Job job, Frame frame, LoadPath path, TimberSize joist, JoistSizes.Loads loads) {
    Strength strength =
        Strength.of(frame, job.heading().units(), "2-" + joist.size(), joist.depth(), 1)
            .orElseThrow();
    return new Search(job, joist, loads, strength, new ArrayList<>()).sizes(path);
  }

  /** Works it out. */
  private record Search(
      Job job,
      TimberSize joist,
      JoistSizes.Loads loads,
      Strength strength,
      List<Working> workings) {
    OpeningSizes sizes(LoadPath path) {
      List<Finding> findings = new ArrayList<>();
      double trimmer = path.trimmers().stream().mapToDouble(this::trimmer).max().orElse(0);
      double header = path.headers().stream().mapToDouble(this::header).max().orElse(0);
      if (trimmer > 1) {
        findings.add(FloorFrameFindings.overloaded(false, new Ratio(trimmer)));
      }
      if (header > 1) {
        findings.add(FloorFrameFindings.overloaded(true, new Ratio(header)));
      }
      return new OpeningSizes(findings, workings);
    }

    private BeamFormulas formulas() {
      return new BeamFormulas(job.heading().units());
    }

    private Working work(Formula formula, Quantity... quantities) {
      Working working = Working.of(formula, "2-" + joist.size(), quantities);
      workings.add(working);
      return working;
    }

    private Force force(double area) {
      return new Force(area * loads.bending().pascals());
    }

    /** Part of a joist's strength or stiffness that its own floor and its headers take. */
    private double trimmer(Trimmer each) {
      double hung = each.hung().stream().mapToDouble(At::area).sum();
      double along = each.hung().stream().mapToDouble(at -> at.area() * at.along()).sum() / hung;
      double own = each.span() * each.width();
      Length span = new Length(each.span());
      Working stress =
          work(
              formulas().hungStress(),
              force(own),
              span,
              force(hung),
              new Length(along),
              PLIES,
              joist.width(),
              joist.depth());
      double end = own / 2 + hung * Math.max(along, each.span() - along) / each.span();
      return used(stress, force(end), span);
    }

    private double header(Header each) {
      Length span = new Length(each.high() - each.low());
      Working stress =
          work(
              formulas().headerStress(),
              force(each.area()),
              span,
              PLIES,
              joist.width(),
              joist.depth());
      return used(stress, force(each.area()), span);
    }

    private double used(Working stress, Force end, Length span) {
      Pressure bending = stress.asPressure();
      Working shear = work(formulas().shearStress(), end, PLIES, joist.width(), joist.depth());
      Working sag =
          work(
              formulas().sag(),
              bending,
              new Count(loads.moving().dividedBy(loads.bending())),
              span,
              strength.stiffness(),
              joist.depth());
      return Math.max(
          bending.dividedBy(strength.bending()),
          Math.max(
              shear.asPressure().dividedBy(strength.shear()),
              sag.asLength().times(FloorFrameFormulas.LEAST_DEFLECTION).dividedBy(span)));
    }
  }
}

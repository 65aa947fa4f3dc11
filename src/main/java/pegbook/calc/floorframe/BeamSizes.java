package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pegbook.calc.floorframe.FloorFrame.BeamSize;
import pegbook.calc.floorframe.FloorFrame.Limit;
import pegbook.calc.floorframe.LoadPath.At;
import pegbook.calc.floorframe.LoadPath.BayLoad;
import pegbook.figures.Working;
import pegbook.job.Frame;
import pegbook.job.Job;
import pegbook.measure.Area;
import pegbook.measure.Count;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Ratio;
import pegbook.published.TimberFactor;
import pegbook.published.TimberSize;

/**
 * Holds sizes of beams against what lies on each; one size for all, so that all joists lie at one
 * height.
 *
 * @param sizes in order of the timber in them
 * @param chosen the least that is enough, where one is
 */
record BeamSizes(List<BeamSize> sizes, Optional<Beam> chosen, List<Working> workings) {
  /** Plies in a beam that share a load by the NDS: three at least. */
  private static final int SHARING = 3;

  /** A beam's end finds so much room on a post that two beams meet over. */
  private static final Length HALF_POST = Length.ofInches(2.75);

  /** A beam of a size. */
  record Beam(TimberSize size, int plies, Strength strength) {
    double timber() {
      return plies * size.width().metres() * size.depth().metres();
    }

    Length width() {
      return size.width().times(plies);
    }
  }

  static BeamSizes of(
      Job job, Frame frame, JoistLayout layout, LoadPath path, JoistSizes.Loads loads) {
    return new Search(job, frame, layout, path, loads).sizes();
  }

  /** How much of a beam a bay uses, and by what. */
  private record Use(double part, Limit limit, String bay, List<Working> workings) {}

  /** Looks through sizes and bays. */
  private record Search(
      Job job, Frame frame, JoistLayout layout, LoadPath path, JoistSizes.Loads loads) {
    BeamSizes sizes() {
      List<Beam> beams = beams();
      List<Use> uses = beams.stream().map(this::worst).toList();
      int chosen = -1;
      for (int i = 0; i < beams.size() && chosen < 0; i++) {
        chosen = uses.get(i).part() <= 1 + 1e-9 ? i : -1;
      }
      List<BeamSize> sizes = new ArrayList<>();
      for (int i = 0; i < beams.size(); i++) {
        Beam beam = beams.get(i);
        Use use = uses.get(i);
        sizes.add(
            new BeamSize(
                beam.size().size(),
                beam.plies(),
                beam.size().depth(),
                new Ratio(use.part()),
                use.bay(),
                use.limit(),
                i == chosen));
      }
      int shown = chosen < 0 ? beams.size() - 1 : chosen;
      List<Working> workings = new ArrayList<>(beams.get(shown).strength().workings());
      workings.addAll(uses.get(shown).workings());
      return new BeamSizes(
          sizes, chosen < 0 ? Optional.empty() : Optional.of(beams.get(chosen)), workings);
    }

    private List<Beam> beams() {
      List<Beam> beams = new ArrayList<>();
      List<Integer> plies = frame.beamPlies().map(List::of).orElse(List.of(2, SHARING));
      for (int count : plies) {
        for (TimberSize size : TimberSize.joists(job.heading().units())) {
          double shared = count < SHARING ? 1 : TimberFactor.find("repetitive").value();
          Strength.of(frame, job.heading().units(), count + "-" + size.size(), size.depth(), shared)
              .ifPresent(strength -> beams.add(new Beam(size, count, strength)));
        }
      }
      beams.sort(Comparator.comparingDouble(Beam::timber));
      return beams;
    }

    private Use worst(Beam beam) {
      return path.bays().stream()
          .filter(bay -> bay.total() > 0)
          .map(bay -> use(beam, bay))
          .max(Comparator.comparingDouble(Use::part))
          .orElse(new Use(0, Limit.BENDING, "", List.of()));
    }

    private Use use(Beam beam, BayLoad bay) {
      String name = layout.bays().get(bay.bay()).name();
      Bending bending = new Bending(job, name, beam, bay, loads);
      Working stress = bending.stress();
      Working shear = bending.shear();
      Working sag = bending.sag(stress);
      Working bearing = bending.bearing();
      double[] parts = {
        stress.asPressure().dividedBy(beam.strength().bending()),
        sag.asLength().times(FloorFrameFormulas.LEAST_DEFLECTION).metres() / bay.length(),
        shear.asPressure().dividedBy(beam.strength().shear()),
        bearing.asLength().dividedBy(HALF_POST)
      };
      int worst = 0;
      for (int i = 1; i < parts.length; i++) {
        worst = parts[i] > parts[worst] ? i : worst;
      }
      return new Use(parts[worst], Limit.IN_ORDER.get(worst), name, bending.workings());
    }
  }

  /** A bay's stresses. */
  static final class Bending {
    private final BeamFormulas formulas;
    private final String name;
    private final Beam beam;
    private final BayLoad bay;
    private final JoistSizes.Loads loads;
    private final List<Working> workings = new ArrayList<>();

    Bending(Job job, String name, Beam beam, BayLoad bay, JoistSizes.Loads loads) {
      this.formulas = new BeamFormulas(job.heading().units());
      this.name = name;
      this.beam = beam;
      this.bay = bay;
      this.loads = loads;
    }

    List<Working> workings() {
      return List.copyOf(workings);
    }

    private Working work(pegbook.figures.Formula formula, pegbook.measure.Quantity... of) {
      Working working = Working.of(formula, name, of);
      workings.add(working);
      return working;
    }

    private Force force(double area, Pressure load) {
      return new Force(area * load.pascals());
    }

    /** The post that bears more, and how much, under a load. */
    private Force end(Pressure load) {
      Working all = work(formulas.onArea(), new Area(bay.total()), load);
      Working second = work(formulas.reaction(), all.asForce(), new Length(bay.centre()), length());
      Force first = all.asForce().minus(second.asForce());
      return first.max(second.asForce());
    }

    private Length length() {
      return new Length(bay.length());
    }

    Working stress() {
      Count plies = new Count(beam.plies());
      if (bay.even() > 0) {
        Working all = work(formulas.onArea(), new Area(bay.total()), loads.bending());
        return work(
            formulas.evenStress(),
            all.asForce(),
            length(),
            plies,
            beam.size().width(),
            beam.size().depth());
      }
      Worst worst = Worst.of(bay);
      return work(
          formulas.stress(),
          force(worst.reaction(), loads.bending()),
          new Length(worst.way()),
          force(worst.before(), loads.bending()),
          new Length(worst.from()),
          plies,
          beam.size().width(),
          beam.size().depth());
    }

    Working shear() {
      return work(
          formulas.shearStress(),
          end(loads.bending()),
          new Count(beam.plies()),
          beam.size().width(),
          beam.size().depth());
    }

    /** The stress counts long loads as such; the sag takes what comes and goes in full. */
    Working sag(Working stress) {
      return work(
          formulas.sag(),
          stress.asPressure(),
          new Count(loads.moving().dividedBy(loads.bending())),
          length(),
          beam.strength().stiffness(),
          beam.size().depth());
    }

    Working bearing() {
      return work(
          formulas.bearingLength(),
          end(loads.whole()),
          beam.strength().bearing(),
          new Count(beam.plies()),
          beam.size().width());
    }
  }

  /**
   * Where bending is worst under loads at places, in floor carried.
   *
   * @param reaction on the first post
   * @param way from the first post to that place
   * @param before what lies before it
   * @param from way from the middle of what lies before it
   */
  record Worst(double reaction, double way, double before, double from) {
    static Worst of(BayLoad bay) {
      double second = bay.total() * bay.centre() / bay.length();
      double first = bay.total() - second;
      List<At> sorted = bay.loads().stream().sorted(Comparator.comparingDouble(At::along)).toList();
      double before = 0;
      double moment = 0;
      Worst worst = new Worst(first, 0, 0, 0);
      for (At at : sorted) {
        double from = before > 0 ? at.along() - moment / before : 0;
        Worst here = new Worst(first, at.along(), before, from);
        worst = here.moment() > worst.moment() ? here : worst;
        before += at.area();
        moment += at.area() * at.along();
      }
      return worst;
    }

    double moment() {
      return reaction * way - before * from;
    }
  }
}

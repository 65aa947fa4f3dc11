package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.calc.floorframe.FloorFrame.PostRow;
import pegbook.figures.Formula;
import pegbook.figures.Working;
import pegbook.job.Frame;
import pegbook.job.Frame.Timber;
import pegbook.job.Job;
import pegbook.measure.Area;
import pegbook.measure.Count;
import pegbook.measure.Force;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.Quantity;
import pegbook.published.PostValue;
import pegbook.published.TimberFactor;
import pegbook.published.TimberSize;

/**
 * Posts of one size, what each bears, and how tall it may stand under that.
 *
 * @param size of all of them
 * @param rows post by post
 * @param workings the steps, alike posts once
 */
record PostSizes(TimberSize size, List<PostRow> rows, List<Working> workings) {
  /**
   * Part of a given mean modulus that columns count with: 1.03 (1 - 1.645 * 0.25) / 1.66, the NDS's
   * own rule for sawn timber (appendix D, from memory).
   */
  private static final double LEAST_PART = 0.365;

  /** No post may be more slender, by height to side (NDS 3.7.1.4, from memory). */
  private static final double MOST_SLENDER = 50;

  PostSizes {
    rows = List.copyOf(rows);
    workings = List.copyOf(workings);
  }

  static PostSizes of(Job job, Frame frame, LoadPath path, Pressure whole) {
    return new Search(job, frame, whole, new ArrayList<>()).sizes(path);
  }

  /** What a short post bears, and the modulus that a tall one bends by. */
  private record Strong(Pressure compression, Pressure stiffness) {}

  /** Works it out. */
  private record Search(Job job, Frame frame, Pressure whole, List<Working> workings) {
    PostSizes sizes(LoadPath path) {
      // The thickest: two beams meet over a corner post, and both need room.
      List<TimberSize> listed = TimberSize.posts(job.heading().units());
      TimberSize size = listed.get(listed.size() - 1);
      Strong strong = strong(size);
      Map<Long, Length> known = new LinkedHashMap<>();
      List<PostRow> rows = new ArrayList<>();
      path.carried()
          .forEach(
              (mark, area) -> {
                Force load = new Force(area * whole.pascals());
                Length may =
                    known.computeIfAbsent(
                        Math.round(load.newtons()), any -> mayStand(mark, area, strong, size));
                rows.add(new PostRow(mark, load, may));
              });
      return new PostSizes(size, rows, workings);
    }

    private Working work(Formula formula, String subject, Quantity... quantities) {
      Working working = Working.of(formula, subject, quantities);
      workings.add(working);
      return working;
    }

    private Strong strong(TimberSize size) {
      if (frame.timber() instanceof Timber.Given given) {
        return new Strong(given.compression(), given.stiffness().times(LEAST_PART));
      }
      Timber.Graded graded = (Timber.Graded) frame.timber();
      PostValue value = PostValue.find(graded.species().id(), graded.grade().id()).orElseThrow();
      double wet = frame.wet() ? TimberFactor.find("wet-post-compression").value() : 1;
      Working compression =
          work(
              new StrengthFormulas(job.heading().units()).compression(),
              size.size(),
              value.compression(),
              new Count(wet));
      return new Strong(compression.asPressure(), value.stiffnessLeast());
    }

    private Length mayStand(String mark, double area, Strong strong, TimberSize size) {
      if (!(area > 1e-9)) {
        return size.depth().times(MOST_SLENDER);
      }
      BeamFormulas formulas = new BeamFormulas(job.heading().units());
      Working load = work(formulas.onArea(), mark, new Area(area), whole);
      Working part =
          work(formulas.postPart(), mark, load.asForce(), strong.compression(), size.depth());
      return work(
              formulas.postHeight(),
              mark,
              new Count(part.result()),
              strong.compression(),
              strong.stiffness(),
              size.depth())
          .asLength();
    }
  }
}

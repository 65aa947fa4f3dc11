package pegbook.jobfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.geometry.Figure;
import pegbook.job.Outline;
import pegbook.measure.Angle;
import pegbook.measure.Length;

/**
 * The marks of a job as far as its file could be read; a part that was refused is not here, so that
 * nothing is told of it twice.
 *
 * @param outline the outline
 * @param figure the outline with its supports, where they fit inside
 * @param misfit whether everything was read and the supports do not fit
 * @param piers the objects of the piers, in the order of the file
 */
record JobMarks(
    Optional<Outline> outline, Optional<Figure> figure, boolean misfit, List<Fields> piers) {
  /** More marks than this are refused. */
  static final int MOST = 500;

  static JobMarks of(Report report) {
    Optional<Fields> layout = report.object(JobKeys.LAYOUT.name());
    Optional<Outline> outline = layout.flatMap(fields -> fields.find(LayoutKeys.OUTLINE));
    boolean known =
        outline.isPresent()
            && layout.stream()
                .noneMatch(
                    fields ->
                        fields.isRefused(LayoutKeys.SUPPORT_INSET)
                            || fields.isRefused(LayoutKeys.CENTRE_TO_FIRST_MARK));
    Optional<Figure> figure =
        known && outline.get().supportCount() <= MOST
            ? figure(outline.get(), layout.get())
            : Optional.empty();
    boolean misfit = known && outline.get().supportCount() <= MOST && figure.isEmpty();
    return new JobMarks(outline, figure, misfit, piers(report));
  }

  /** The names of all marks, where they are known. */
  Optional<List<String>> names() {
    if (outline.isEmpty()) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>();
    for (int i = 1; i <= outline.get().supportCount(); i++) {
      names.add("S" + i);
    }
    piers.stream().flatMap(pier -> pier.find(PierKeys.ID).stream()).distinct().forEach(names::add);
    return Optional.of(names);
  }

  private static List<Fields> piers(Report report) {
    List<Fields> piers = new ArrayList<>();
    for (int i = 0; i <= MOST; i++) {
      report.object(JobKeys.PIERS.name() + "[" + i + "]").ifPresent(piers::add);
    }
    return piers;
  }

  private static Optional<Figure> figure(Outline outline, Fields layout) {
    Length inset = layout.findOrDefault(LayoutKeys.SUPPORT_INSET).orElseThrow();
    Optional<Angle> azimuth =
        outline instanceof Outline.Free
            ? layout.find(LayoutKeys.CENTRE_TO_FIRST_MARK)
            : layout.findOrDefault(LayoutKeys.CENTRE_TO_FIRST_MARK);
    return outline.figure(inset, azimuth);
  }
}

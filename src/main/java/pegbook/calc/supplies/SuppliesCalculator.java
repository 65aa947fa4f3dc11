package pegbook.calc.supplies;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.MarkRuns;
import pegbook.figures.Need;
import pegbook.figures.Season;
import pegbook.figures.Working;
import pegbook.geometry.Hull;
import pegbook.job.Job;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;

/**
 * Counts what the sheets and day sheets tell people to use beside concrete, gravel, steel, pegs and
 * strings, each of which its own subject counts: paint, covers and a fence for open holes, timber
 * for forms, bolts and sleeves of piers, sheets for curing.
 *
 * <p>Covers and fence serve the day on which most holes stand open; they are moved on. Forms are
 * counted as if all stood at once: what is in concrete on one day is seldom free on the next.
 */
public final class SuppliesCalculator {
  /** One at the middle of each side, so that the cover cannot slide. */
  private static final long STAKES_A_COVER = 4;

  private final Job job;
  private final List<Hole> holes;
  private final SuppliesFormulas formulas;
  private final boolean imperial;
  private final List<Working> workings = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();

  private SuppliesCalculator(Job job, List<Hole> holes) {
    this.job = job;
    this.holes = holes;
    this.formulas = new SuppliesFormulas(job.heading().units());
    this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
  }

  /**
   * Counts them.
   *
   * @param holes every hole with its depth
   * @param open for each work day the holes that stand open at some time of it
   */
  public static Supplies calculate(Job job, List<Hole> holes, List<List<String>> open) {
    return new SuppliesCalculator(job, holes).count(open);
  }

  private Supplies count(List<List<String>> open) {
    needs.add(ShopNeeds.whole("marking-paint", Map.of(), paint()));
    covers(open);
    fence(open);
    FormTimber timber = new FormTimber(job, holes);
    needs.addAll(timber.needs());
    workings.addAll(timber.workings());
    PierFittings fittings = new PierFittings(job, holes);
    needs.addAll(fittings.needs());
    workings.addAll(fittings.workings());
    curing();
    return new Supplies(List.of(), workings, needs);
  }

  private Working work(String subject, Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, subject, quantities);
    workings.add(working);
    return working;
  }

  private static Length widest(List<Hole> some) {
    return some.stream().map(Hole::diameter).max(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  private Working paint() {
    return work("", formulas.paint(), new Count(holes.size()), widest(holes));
  }

  private List<Hole> holes(List<String> marks) {
    return holes.stream().filter(hole -> marks.contains(hole.mark())).toList();
  }

  /** Of each width as many covers as stand open at once. */
  private void covers(List<List<String>> open) {
    Map<Long, Integer> most = new TreeMap<>();
    for (List<String> day : open) {
      Map<Long, Integer> count = new TreeMap<>();
      holes(day).forEach(hole -> count.merge(micrometres(hole.diameter()), 1, Integer::sum));
      count.forEach((width, holesOpen) -> most.merge(width, holesOpen, Math::max));
    }
    most.forEach((width, count) -> covers(new Length(width / 1e6), count));
  }

  private static long micrometres(Length length) {
    return Math.round(length.metres() * 1e6);
  }

  private void covers(Length width, int count) {
    List<String> marks =
        holes.stream()
            .filter(hole -> micrometres(hole.diameter()) == micrometres(width))
            .map(Hole::mark)
            .toList();
    String subject = MarkRuns.brief(marks);
    List<Length> sheet = SuppliesFormulas.sheet(job.heading().units());
    Working side = work(subject, formulas.cover(), width);
    Working sheets =
        work(
            subject,
            formulas.sheets(),
            new Count(count),
            side.asLength(),
            sheet.get(0),
            sheet.get(1));
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("thick", Argument.of(imperial ? Length.ofInches(0.75) : Length.ofMillimetres(18)));
    words.put("width", Argument.of(sheet.get(0)));
    words.put("length", Argument.of(sheet.get(1)));
    words.put("covers", Argument.of(count));
    words.put("side", Argument.of(side.asLength()));
    boolean wide = side.asLength().isMoreThan(sheet.get(0));
    needs.add(ShopNeeds.whole(wide ? "hole-covers-wide" : "hole-covers", words, sheets));
    needs.add(ShopNeeds.pieces("ground-stakes", Map.of(), STAKES_A_COVER * count));
  }

  /** The longest of any day. */
  private void fence(List<List<String>> open) {
    open.stream()
        .map(this::holes)
        .filter(day -> !day.isEmpty())
        .map(this::round)
        .max(Comparator.comparing(Working::result))
        .ifPresent(
            longest -> {
              workings.add(longest);
              needs.add(ShopNeeds.measured("barrier-fence", Map.of(), longest));
              needs.add(
                  ShopNeeds.whole(
                      "fence-posts", Map.of(), work("", formulas.posts(), longest.asLength())));
            });
  }

  private Working round(List<Hole> day) {
    return Working.of(
        formulas.fence(),
        MarkRuns.brief(day.stream().map(Hole::mark).toList()),
        Hull.round(day.stream().map(Hole::centre).toList()),
        new Count(day.size()),
        widest(day));
  }

  /** A sheet over every top; something warm over it where the work begins in the cold months. */
  private void curing() {
    List<Working> areas = new ArrayList<>();
    for (AlikeHoles alike : AlikeHoles.of(holes)) {
      areas.add(
          work(
              alike.subject(),
              formulas.curing(),
              new Count(alike.count()),
              alike.first().headAcross()));
    }
    Unit unit = imperial ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
    needs.add(
        ShopNeeds.measured(
            "curing-sheet", Map.of(), areas.stream().mapToDouble(Working::result).sum(), unit));
    if (Season.of(job.place().latitude(), job.crew().start()) == Season.COLD) {
      needs.add(ShopNeeds.pieces("curing-blankets", Map.of(), holes.size()));
    }
  }
}

package pegbook.calc.steelplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.steelplan.Element.Kind;
import pegbook.calc.steelplan.Element.Verdict;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.measure.Ratio;
import pegbook.published.Citation;

/** Where upright steel misses the rule of its own element, and where no rule is known. */
final class ElementFindings {
  private static final Citation PLAIN = new Citation("aci-318-19-memory", "chapter 14");

  private final List<Finding> findings = new ArrayList<>();
  private final List<String> plain = new ArrayList<>();

  /** Looks at one element. */
  void check(AlikeHoles alike, Element element) {
    Optional<Ratio> given = element.given();
    if (given.isEmpty()) {
      bare(alike, element);
    } else if (element.verdict() == Verdict.LESS) {
      findings.add(little("column-little-steel", alike, element, given.get()));
    } else if (element.verdict() == Verdict.ENGINEER) {
      findings.add(little("pier-little-steel", alike, element, given.get()));
    } else if (element.verdict() == Verdict.MORE) {
      findings.add(
          SteelPlanFindings.finding(
                  Finding.Kind.ASK, "column-much-steel", alike, "steel.bars", Element.COLUMN)
              .with("ratio", Argument.of(given.get()))
              .with("most", Argument.of(ElementNaming.GREATEST_RATIO)));
    }
  }

  /** Without steel: a column must not be, the others may, where the authority agrees. */
  private void bare(AlikeHoles alike, Element element) {
    if (alike.first().steel().isPresent()) {
      return;
    }
    if (element.kind() == Kind.COLUMN) {
      findings.add(
          SteelPlanFindings.finding(
                  Finding.Kind.ASK, "column-without-steel", alike, "steel", Element.COLUMN)
              .citing(PLAIN)
              .with("asked", Argument.of(ElementNaming.COLUMN_RATIO)));
    } else {
      plain.addAll(alike.marks());
    }
  }

  private static Finding little(String id, AlikeHoles alike, Element element, Ratio given) {
    return SteelPlanFindings.finding(
            Finding.Kind.ASK, id, alike, "steel.bars", element.kind().source())
        .with("ratio", Argument.of(given))
        .with("asked", Argument.of(element.asked().orElse(ElementNaming.COLUMN_RATIO)))
        .with("oversize", Argument.of(ElementNaming.OVERSIZE_RATIO))
        .with("given", Argument.of(element.bars()))
        .with("bars", Argument.of(element.barsWanted().orElse(ElementNaming.FEWEST_BARS)))
        .with("size", Argument.words(alike.first().steel().orElseThrow().size()));
  }

  List<Finding> all(List<String> order) {
    List<Finding> all = new ArrayList<>(findings);
    if (!plain.isEmpty()) {
      all.add(
          Finding.of(
                  Finding.Kind.ASK,
                  "plain-concrete",
                  "supports.steel",
                  Decider.BUILDING_AUTHORITY,
                  PLAIN)
              .about(order.stream().filter(plain::contains).toList()));
    }
    return all;
  }
}

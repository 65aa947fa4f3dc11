package pegbook.calc.digschedule;

import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.published.Citation;
import pegbook.published.ExcavationRule;

/**
 * How far spoil and carts stay from a hole's edge: the rule of the United States, elsewhere the
 * same distance as common practice.
 *
 * @param distance from the edge of the hole to the foot of the heap
 * @param source where it is from
 */
public record EdgeRule(Length distance, Citation source) {
  static EdgeRule of(Job job) {
    ExcavationRule rule = ExcavationRule.find("spoil-edge");
    return new EdgeRule(
        rule.threshold(),
        job.place().isUnitedStates() ? rule.citation() : Citation.COMMON_PRACTICE);
  }
}

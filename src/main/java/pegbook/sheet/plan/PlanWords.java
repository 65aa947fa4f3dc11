package pegbook.sheet.plan;

import java.util.List;
import java.util.function.Function;
import pegbook.measure.Length;

/**
 * The words on a plan.
 *
 * @param north the letter over the arrow
 * @param checkBar what stands over the check bar
 * @param benchmark names the benchmark
 * @param lotLine names the lot line
 * @param setback names the setback line, with its distance
 * @param heap names a heap by the holes it comes from
 * @param length a size in words
 * @param distance a distance on the site in words
 * @param round a round length in words, for the scale bar
 * @param tape a tape reading in words
 */
public record PlanWords(
    String north,
    String checkBar,
    String benchmark,
    String lotLine,
    String setback,
    Function<List<String>, String> heap,
    Function<Length, String> length,
    Function<Length, String> distance,
    Function<Length, String> round,
    Function<Length, String> tape) {}

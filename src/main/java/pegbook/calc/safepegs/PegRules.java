package pegbook.calc.safepegs;

import pegbook.job.Job;
import pegbook.measure.Length;
import pegbook.measure.UnitSystem;

/**
 * What a peg keeps clear of and what a tape or string passes. All common practice, no source; in
 * whole inches or centimetres.
 *
 * @param hole from a hole's edge, where the ground may give
 * @param heap from the foot of a spoil heap
 * @param floor outside the floor's edge, so that nobody builds over it
 * @param path width of the strip between a hole and its heap: a barrow's
 * @param feature from a fixed thing that names no distance of its own
 * @param line from a buried line that names no distance of its own
 * @param lot inside the lot line
 * @param tape height at which a tape is held level over the ground
 * @param string height of a string over the ground
 * @param passing how far a tape or string passes beside a corner or a trunk
 * @param apart least distance between two pegs that are taped from
 * @param beyond how far past its last mark a string's peg is looked for
 * @param step in which that distance is tried
 */
public record PegRules(
    Length hole,
    Length heap,
    Length floor,
    Length path,
    Length feature,
    Length line,
    Length lot,
    Length tape,
    Length string,
    Length passing,
    Length apart,
    Length beyond,
    Length step) {

  static PegRules of(Job job) {
    return job.heading().units() == UnitSystem.IMPERIAL ? imperial() : metric();
  }

  private static PegRules imperial() {
    return new PegRules(
        Length.ofInches(24),
        Length.ofInches(6),
        Length.ofInches(24),
        Length.ofInches(30),
        Length.ofInches(12),
        Length.ofInches(24),
        Length.ofInches(6),
        Length.ofInches(12),
        Length.ofInches(24),
        Length.ofInches(6),
        Length.ofFeet(5),
        Length.ofFeet(20),
        Length.ofInches(6));
  }

  private static PegRules metric() {
    return new PegRules(
        Length.ofMillimetres(600),
        Length.ofMillimetres(150),
        Length.ofMillimetres(600),
        Length.ofMillimetres(750),
        Length.ofMillimetres(300),
        Length.ofMillimetres(600),
        Length.ofMillimetres(150),
        Length.ofMillimetres(300),
        Length.ofMillimetres(600),
        Length.ofMillimetres(150),
        new Length(1.5),
        new Length(6),
        Length.ofMillimetres(100));
  }
}

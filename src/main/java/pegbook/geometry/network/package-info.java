/**
 * Networks of taped distances, adjusted by least squares.
 *
 * <p>A {@link pegbook.geometry.network.Network} is points and distances; {@link
 * pegbook.geometry.network.NetworkAdjustment} gives the places that fit the distances best, how
 * well each is known, and how well each distance is checked by the others. Frame and units are
 * those of {@link pegbook.geometry}: metres east and north. The same rules hold throughout:
 *
 * <ul>
 *   <li>a residual is the adjusted value less the measured one;
 *   <li>weights are one over the square of the standard deviation, so the factor of variance is a
 *       pure number that is near 1 when the standard deviations were honest;
 *   <li>spreads and standard deviations are those of the deviations put in (a priori); {@link
 *       pegbook.geometry.network.Adjustment#varianceFactor} scales them to what the residuals say.
 * </ul>
 *
 * <p>Distances cannot show that the whole figure was shifted, turned or mirrored. What holds the
 * frame is said by the points (fixed, expected) and by the {@link pegbook.geometry.network.Datum}.
 *
 * <p>This is the only package that knows the library of linear algebra.
 */
@NullMarked
package pegbook.geometry.network;

import org.jspecify.annotations.NullMarked;

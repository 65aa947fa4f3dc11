/**
 * The plain records that subjects share: marks, holes, heaps, things to buy and to do, findings,
 * formulas and workings. Calculators of different subjects meet only here.
 */
@NullMarked
package pegbook.figures;

import org.jspecify.annotations.NullMarked;

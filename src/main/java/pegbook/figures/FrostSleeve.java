package pegbook.figures;

import pegbook.measure.Length;

/**
 * A smooth sleeve that keeps the grip of frost off a footing's side.
 *
 * @param mark the footing
 * @param across diameter of the concrete that it goes round
 * @param length from the ground down through the frost
 */
public record FrostSleeve(String mark, Length across, Length length) {}

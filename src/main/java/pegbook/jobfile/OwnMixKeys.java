package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.List;
import pegbook.job.OwnMix;
import pegbook.measure.Density;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Notation;
import pegbook.measure.Ratio;

/** Concrete from cement, sand and stone. */
final class OwnMixKeys {
  static final Key<Length> STONE =
      Key.orElse(
          "stone",
          Values.length("3/8 in", "1 1/2 in", "9.5 mm", "40 mm"),
          "\"3/4 in\"",
          "\"20 mm\"",
          COMMON_PRACTICE);
  static final Key<Density> STONE_DENSITY =
      Key.orElse(
          "stoneDensity",
          new QuantityValue<>(
              Notation.DENSITIES, new Range("80 pcf", "120 pcf", "1280 kg/m3", "1920 kg/m3")),
          "\"100 pcf\"",
          "\"1600 kg/m3\"",
          COMMON_PRACTICE);
  static final Key<OwnMix.Sand> SAND =
      Key.orElse("sand", ChoiceValue.of(OwnMix.Sand.class), "\"medium\"", COMMON_PRACTICE);
  static final Key<Length> SLUMP =
      Key.orElse(
          "slump",
          Values.length("1 in", "4 in", "25 mm", "100 mm"),
          "\"3 in\"",
          "\"75 mm\"",
          COMMON_PRACTICE);
  static final Key<Ratio> SAND_WATER =
      Key.orElse("sandWater", Values.ratio("0 %", "12 %"), "\"4 %\"", COMMON_PRACTICE);
  static final Key<Ratio> STONE_WATER =
      Key.orElse("stoneWater", Values.ratio("0 %", "5 %"), "\"0 %\"", COMMON_PRACTICE);
  static final Key<Mass> CEMENT_BAG =
      Key.orElse(
          "cementBag",
          Values.mass("20 lb", "110 lb", "10 kg", "50 kg"),
          "\"94 lb\"",
          "\"25 kg\"",
          COMMON_PRACTICE);
  static final Key<OwnMix> OWN_MIX =
      Key.free(
          "ownMix",
          new SectionValue<>(
              List.of(STONE, STONE_DENSITY, SAND, SLUMP, SAND_WATER, STONE_WATER, CEMENT_BAG),
              fields ->
                  new OwnMix(
                      fields.get(STONE),
                      fields.get(STONE_DENSITY),
                      fields.get(SAND),
                      fields.get(SLUMP),
                      fields.get(SAND_WATER),
                      fields.get(STONE_WATER),
                      fields.get(CEMENT_BAG))));

  private OwnMixKeys() {}
}

package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.List;
import pegbook.job.Shop;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.measure.Volume;

/** How things are sold and fetched. */
final class ShopKeys {
  static final Key<Mass> LOAD =
      Key.free("load", Values.mass("50 lb", "60000 lb", "20 kg", "30000 kg"));
  static final Key<Length> TUBE =
      Key.orElse(
          "tube",
          Values.length("1 ft", "40 ft", "300 mm", "12 m"),
          "\"4 ft\"",
          "\"3 m\"",
          COMMON_PRACTICE);
  static final Key<Volume> GRAVEL_BAG =
      Key.orElse(
          "gravelBag",
          Values.volume("0.1 ft3", "3 ft3", "3 L", "100 L"),
          "\"0.5 ft3\"",
          "\"15 L\"",
          COMMON_PRACTICE);
  static final SectionValue<Shop> SHOP =
      new SectionValue<>(
          List.of(LOAD, TUBE, GRAVEL_BAG),
          fields -> new Shop(fields.find(LOAD), fields.get(TUBE), fields.get(GRAVEL_BAG)));

  private ShopKeys() {}
}

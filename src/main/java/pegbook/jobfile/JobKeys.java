package pegbook.jobfile;

import java.util.ArrayList;
import java.util.List;
import pegbook.job.Concrete;
import pegbook.job.Crew;
import pegbook.job.Default;
import pegbook.job.Field;
import pegbook.job.Floor;
import pegbook.job.Ground;
import pegbook.job.Job;
import pegbook.job.Layout;
import pegbook.job.Pier;
import pegbook.job.Place;
import pegbook.job.Plan;
import pegbook.job.Prices;
import pegbook.job.Shop;
import pegbook.job.Site;
import pegbook.job.Spoil;
import pegbook.job.Stock;
import pegbook.job.Supports;

/** The keys at the top of a job file. */
final class JobKeys {
  /** Names the schema for the user's editor; the reader has no use for it. */
  static final Key<String> SCHEMA = Key.free("$schema", Values.NAME);

  static final Key<Place> PLACE = Key.part("place", PlaceKeys.PLACE);
  static final Key<Site> SITE = Key.part("site", SiteKeys.SITE);
  static final Key<Ground> GROUND =
      Key.required("ground", GroundKeys.GROUND, "{\"soil\": \"sandy clay\"}");
  static final Key<Layout> LAYOUT =
      Key.required(
          "layout",
          LayoutKeys.LAYOUT,
          "{\"outline\": {\"regular\": {\"sides\": 6, \"acrossFlats\": \"12 ft\"}}}");
  static final Key<Supports> SUPPORTS = Key.part("supports", FootingKeys.SUPPORTS);
  static final Key<List<Pier>> PIERS = Key.free("piers", new ListValue<>(PierKeys.PIER, 0, 500));
  static final Key<Floor> FLOOR = Key.free("floor", WorkKeys.FLOOR);
  static final Key<Crew> CREW = Key.part("crew", WorkKeys.CREW);
  static final Key<Plan> PLAN = Key.part("plan", PlanKeys.PLAN);
  static final Key<Spoil> SPOIL = Key.part("spoil", WorkKeys.SPOIL);
  static final Key<Concrete> CONCRETE = Key.part("concrete", WorkKeys.CONCRETE);
  static final Key<Stock> STOCK = Key.part("stock", StockKeys.STOCK);
  static final Key<Shop> SHOP = Key.part("shop", ShopKeys.SHOP);
  static final Key<Prices> PRICES = Key.free("prices", PriceKeys.PRICES);
  static final Key<Field> FIELD = Key.part("field", FieldKeys.FIELD);

  static final List<Key<?>> ALL = all();

  private JobKeys() {}

  private static List<Key<?>> all() {
    List<Key<?>> all = new ArrayList<>();
    all.add(SCHEMA);
    all.addAll(HeadingKeys.ALL);
    all.addAll(
        List.of(
            PLACE,
            SITE,
            GROUND,
            LAYOUT,
            SUPPORTS,
            PIERS,
            FLOOR,
            WindKeys.WIND,
            DesignKeys.DESIGN,
            PowerKeys.POWER,
            CREW,
            PLAN,
            ToolKeys.TOOLS,
            SPOIL,
            CONCRETE,
            STOCK,
            SHOP,
            PRICES,
            FIELD));
    return List.copyOf(all);
  }

  static Job job(String name, Fields fields, List<Default> defaults) {
    return new Job(
        name,
        HeadingKeys.heading(fields),
        fields.get(PLACE),
        fields.get(SITE),
        fields.get(GROUND),
        fields.get(LAYOUT),
        fields.get(SUPPORTS),
        fields.find(PIERS).orElse(List.of()),
        fields.find(FLOOR),
        fields.find(WindKeys.WIND),
        fields.get(DesignKeys.DESIGN),
        fields.get(CREW),
        fields.get(PLAN),
        fields.get(ToolKeys.TOOLS),
        fields.get(SPOIL),
        fields.get(CONCRETE),
        fields.get(STOCK),
        fields.get(SHOP),
        fields.find(PRICES),
        fields.get(FIELD),
        fields.find(PowerKeys.POWER),
        defaults);
  }
}

package pegbook.testing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes up job files that are legal and unlike each other: 3 to 60 marks, every outline, both unit
 * systems, every paper, any bearing, long names, sites with and without anything on them. Supports
 * stand clear of one another by the way the outline is made, piers by the ring they stand on.
 */
public final class JobMaker {
  /** How many jobs there are before outline, units and paper come round again. */
  public static final int ROUND = 50;

  private static final List<String> PAPERS = List.of("letter", "A4", "legal", "A3", "tabloid");
  private static final List<String> BEARINGS =
      List.of("359 deg", "0 deg", "359.999 deg", "90 deg", "180 deg", "45 deg", "0.001 deg");
  private static final List<String> SOILS =
      List.of("sand", "sandy gravel", "clay", "silty sand", "loam", "sandy clay", "rock");

  private final int number;
  private final Chance chance;
  private final boolean imperial;
  private final Written written;
  private final ObjectNode job = JsonNodeFactory.instance.objectNode();
  private final List<String> marks = new ArrayList<>();

  private JobMaker(int number) {
    this.number = number;
    this.chance = new Chance(7_000_003L + number);
    this.imperial = number / 5 % 2 == 0;
    this.written = new Written(imperial, chance);
  }

  /** The text of the job file with a number, 0 and up; the same number gives the same text. */
  public static String text(int number) {
    return new JobMaker(number).make().toPrettyString();
  }

  /** From 3 to 60, spread evenly and out of order over a round. */
  private int supportsWished() {
    return 3 + (number * 17 % ROUND) * 57 / (ROUND - 1);
  }

  private ObjectNode make() {
    double spacing = chance.between(1000, 2600);
    double hole = Math.min(chance.between(250, 500), spacing - 400);
    double inset = chance.oneOf(List.of(100.0, 150.0, 200.0, 250.0));
    int piers = number % 7 == 0 ? 0 : Math.min(chance.whole(0, 4), 60 - supportsWished());
    MadeOutline outline =
        MadeOutline.of(
            number % 5, new MadeOutline.Wish(chance, written, supportsWished(), spacing, inset));
    for (int i = 1; i <= outline.supports(); i++) {
      marks.add("S" + i);
    }
    heading();
    layout(outline, inset);
    new MadeFootings(job, chance, written, imperial).supports(hole).piers(outline, hole, piers);
    for (int i = 1; i <= piers; i++) {
      marks.add("P" + i);
    }
    MadeGround ground = new MadeGround(job, chance, written, imperial);
    ground.ground(marks, outline.reach(), fall());
    ground.freezing(number);
    ground.uplift(number);
    new MadeDesign(job, number, imperial).design();
    new MadeSite(job, chance, written, imperial).place().site(outline.reach()).work();
    new MadeStock(job, number, imperial).stock();
    new MadeFrame(job, number, imperial).frame();
    daySheets();
    heat();
    new MadeField(job, number, chance, written).field();
    new MadePower(job, number, imperial).power(outline.reach());
    return job;
  }

  /** Every eighth job prints its day sheets in both languages. */
  private void daySheets() {
    if (number % 8 == 3) {
      job.withObjectProperty("crew").putArray("daySheets").add("english").add("spanish");
    }
  }

  /** Every fifth job says how hot it may get, up to what nobody should dig in. */
  private void heat() {
    if (number % 5 == 2) {
      job.withObjectProperty("place")
          .putObject("heat")
          .put(
              "temperature",
              imperial ? 74 + number % ROUND / 2 + " °F" : 24 + number % ROUND / 4 + " °C")
          .put("humidity", 5 + number * 7 % 95 + " %");
    }
  }

  /** Every fourth job stands on a steep slope. */
  private double fall() {
    return number % 4 == 1 ? 4000 : 900;
  }

  /** Every sixth job points where a turn comes round, or exactly along an axis. */
  private String bearing() {
    String any = chance.bearing();
    return number % 6 == 5 ? BEARINGS.get(number / 6 % BEARINGS.size()) : any;
  }

  private void heading() {
    job.put("title", LongNames.numbered(chance.oneOf(LongNames.TITLES), number));
    if (chance.often(0.7)) {
      job.put("revision", chance.oneOf(List.of("A", "B", "AA", "preliminary")));
      job.put("issued", "2027-0" + chance.whole(1, 9) + "-1" + chance.whole(0, 9));
      job.put("owner", chance.oneOf(LongNames.OWNERS));
    }
    job.put("units", imperial ? "imperial" : "metric");
    job.put("paper", PAPERS.get((number / 2 + number / 10) % PAPERS.size()));
  }

  private void layout(MadeOutline outline, double inset) {
    ObjectNode layout = job.putObject("layout");
    layout.set("outline", outline.json());
    layout.put("centreToFirstMark", bearing());
    layout.put("supportInset", written.length(inset));
    if (chance.often(0.3)) {
      ArrayNode baseline = layout.putArray("baseline");
      baseline.add("S1").add("S" + chance.whole(2, outline.supports()));
    }
    String division =
        chance.oneOf(
            imperial ? List.of("1/16 in", "1/8 in", "1/100 ft") : List.of("1 mm", "5 mm", "1 cm"));
    layout.putObject("tape").put("division", division).put("length", imperial ? "100 ft" : "30 m");
  }

  /** The text of a soil's name. */
  static String soil(Chance chance) {
    return chance.oneOf(SOILS);
  }
}

package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteexposure.ConcreteExposure;
import pegbook.calc.concreteexposure.ConcreteExposure.Exposed;
import pegbook.calc.concreteexposure.ConcreteExposure.Freezing;
import pegbook.calc.concreteexposure.ConcreteExposure.Wetness;
import pegbook.measure.Length;
import pegbook.measure.Ratio;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.Citation;
import pegbook.published.ConcreteLimit;
import pegbook.published.ExposureClass;

/**
 * What the mix must stand, on the concrete sheet.
 *
 * @param lead whether it freezes, and the class
 * @param elsewhere whose classes these are, outside the United States; empty: there
 * @param largeStone head of the column of air with larger stones
 * @param smallStone head of the column of air with smaller stones
 * @param classes what the classes ask, beside what the job file says
 * @param order what to buy
 * @param label what to read on the bag or the ticket
 * @param weather limits of weather and age
 * @param ages strength by age
 * @param agesNote what these rest on
 * @param season what the time of year may bring
 */
public record ConcreteExposurePart(
    String lead,
    String elsewhere,
    String largeStone,
    String smallStone,
    List<ClassRow> classes,
    String order,
    String label,
    List<LimitRow> weather,
    List<AgeRow> ages,
    String agesNote,
    String season) {

  /** What somebody asks of the mix, or what the job says of it. */
  public record ClassRow(
      String label,
      String strength,
      String water,
      String largeStone,
      String smallStone,
      String from,
      boolean strong) {}

  /** A limit of weather or age. */
  public record LimitRow(String what, String limit, String from) {}

  /** Strength at an age. */
  public record AgeRow(String age, String part, String strength) {}

  static ConcreteExposurePart of(Packet packet, Writing writing) {
    return new Maker(packet, writing).part();
  }

  private record Maker(Packet packet, Writing writing) {
    private ConcreteExposure exposure() {
      return packet.concreteExposure();
    }

    private Formats formats() {
      return writing.formats();
    }

    private String say(String key, Map<String, String> values) {
      return writing.texts().say("concrete-exposure." + key, values);
    }

    private String say(String key) {
      return say(key, Map.of());
    }

    ConcreteExposurePart part() {
      return new ConcreteExposurePart(
          lead(),
          packet.job().place().isUnitedStates() ? "" : say("elsewhere"),
          stone(0.75, 20),
          stone(0.375, 10),
          classes(),
          order(),
          say("label." + mix()),
          new ConcreteLimitRows(packet, writing).rows(),
          exposure().ages().stream()
              .map(
                  age ->
                      new AgeRow(
                          formats().count(age.days()),
                          formats().in(age.part(), Unit.PERCENT, 0),
                          formats().strength(age.strength())))
              .toList(),
          agesNote(),
          say("season." + Written.id(exposure().curing().season())));
    }

    private boolean imperial() {
      return formats().units() == UnitSystem.IMPERIAL;
    }

    private String stone(double inches, double millimetres) {
      Length stone = imperial() ? Length.ofInches(inches) : Length.ofMillimetres(millimetres);
      return say("column.air", Map.of("stone", formats().size(stone)));
    }

    private String agesNote() {
      return say(
          "age.note",
          Map.of(
              "warmth", imperial() ? "70 °F" : "20 °C",
              "cold", imperial() ? "50 °F" : "10 °C",
              "working",
                  packet.workings().numberOf("concrete-exposure.strength-at-age").orElse("")));
    }

    private String lead() {
      Map<String, String> values = new LinkedHashMap<>();
      packet
          .job()
          .ground()
          .frost()
          .ifPresent(frost -> values.put("frost", formats().length(frost.depth())));
      String climate = say("climate." + Written.id(exposure().freezes()), values);
      if (exposure().freezes() == Freezing.NEVER) {
        return climate;
      }
      List<String> sentences = new ArrayList<>(List.of(climate));
      for (Exposed exposed : exposure().exposed()) {
        sentences.add(
            say(
                "wetness." + Written.id(exposed.wetness()),
                Map.of(
                    "marks", formats().names(exposed.marks()),
                    "class", exposed.exposure().name())));
      }
      return String.join(" ", sentences);
    }

    private List<ClassRow> classes() {
      List<ClassRow> rows = new ArrayList<>();
      ExposureClass needed = exposure().needed();
      rows.add(asked(needed, say("row.class", Map.of("class", needed.name())), true));
      boolean waterOpen =
          exposure().freezes() != Freezing.NEVER
              && exposure().exposed().stream().anyMatch(one -> one.wetness() == Wetness.NOT_SAID);
      if (waterOpen && needed.name().equals("F1")) {
        rows.add(asked(ExposureClass.find("F2"), say("row.if-soaked"), false));
      }
      if (exposure().freezes() != Freezing.NEVER) {
        rows.add(asked(ExposureClass.find("F3"), say("row.if-salted"), false));
      }
      if (packet.job().place().isUnitedStates() && exposure().freezes() != Freezing.NEVER) {
        rows.add(dwelling());
      }
      rows.add(given());
      return rows;
    }

    private ClassRow asked(ExposureClass asked, String label, boolean strong) {
      return new ClassRow(
          label,
          formats().strength(asked.strength(formats().units())),
          asked.waterCement().map(most -> formats().number(most, 2)).orElse(say("none")),
          air(asked.airLargeStone(), say("none")),
          air(asked.airSmallStone(), say("none")),
          source(ExposureClass.SOURCE),
          strong);
    }

    private ClassRow dwelling() {
      ConcreteLimit strength = ConcreteLimit.find("residential");
      String air =
          say(
              "row.dwelling-air",
              Map.of(
                  "least", limit("residential-air-least"), "most", limit("residential-air-most")));
      return new ClassRow(
          say("row.dwelling"),
          formats().strength(strength.strength(formats().units())),
          say("none"),
          air,
          air,
          source(strength.source()),
          false);
    }

    private ClassRow given() {
      String air = air(exposure().air(), say("not-said"));
      return new ClassRow(
          say("row.given"),
          formats().strength(exposure().strength()),
          say("not-said"),
          air,
          air,
          say("row.given-from"),
          true);
    }

    private String limit(String id) {
      return formats().number(ConcreteLimit.find(id).in(formats().units()), 0);
    }

    private String air(Optional<Ratio> air, String none) {
      return air.map(formats()::quantity).orElse(none);
    }

    private String source(Citation citation) {
      return new Sources(writing.texts()).write(citation);
    }

    private String mix() {
      if (ConcretePlanSheet.isOwnMix(packet)) {
        return "own";
      }
      return ConcretePlanSheet.isReadyMix(packet) ? "ready-mix" : "bag";
    }

    private String order() {
      ExposureClass needed = exposure().needed();
      Map<String, String> values = new LinkedHashMap<>();
      values.put("wanted", formats().strength(exposure().order()));
      values.put("air", air(needed.airLargeStone(), ""));
      values.put("tolerance", formats().quantity(ExposureClass.AIR_TOLERANCE));
      values.put("water", needed.waterCement().map(most -> formats().number(most, 2)).orElse(""));
      String climate = needed.airLargeStone().isPresent() ? "frost" : "no-frost";
      return say("order." + climate + "." + mix(), values);
    }
  }
}

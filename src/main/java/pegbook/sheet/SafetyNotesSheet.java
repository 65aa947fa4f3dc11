package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.calc.safetynotes.HeatTable;
import pegbook.calc.safetynotes.Lifting;
import pegbook.calc.safetynotes.Note;
import pegbook.job.Call;
import pegbook.job.Place;
import pegbook.measure.Mass;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.published.Citation;
import pegbook.published.MarkingColour;

/**
 * Safety notes and who decides, by stage of the work.
 *
 * @param title heading
 * @param scope whom the rules named here bind
 * @param caution the line of caution
 * @param emergency the number to dial, where the job says; empty: to be written in
 * @param stages the notes
 * @param lifts how bags are lifted; none without bags
 * @param liftNote for what lifts the limits hold
 * @param humidities heads of the table of heat
 * @param heat its rows; none where the job says how hot it gets, or it does not
 * @param colours of marks on the ground, in two columns
 */
public record SafetyNotesSheet(
    String title,
    String scope,
    String caution,
    String emergency,
    List<Stage> stages,
    List<LiftRow> lifts,
    String liftNote,
    List<String> humidities,
    List<HeatRow> heat,
    List<List<Colour>> colours)
    implements Sheet {

  /** The notes of a stage. */
  public record Stage(String heading, List<Line> lines) {}

  /** A note: what to do, why, whose word it is. */
  public record Line(String action, String reason, String source, String decides) {}

  /** A lift, its limit and the bag against it. */
  public record LiftRow(
      String lift,
      String from,
      String to,
      String often,
      String limit,
      String rounded,
      String index) {}

  /** What air of a temperature feels like; danger in strong type. */
  public record HeatRow(String air, List<HeatCell> cells) {}

  /** What it feels like; empty beyond the chart. */
  public record HeatCell(String index, boolean danger) {}

  /** A colour of marks on the ground. */
  public record Colour(String colour, String use) {}

  /** Words the packet's notes. */
  public static SafetyNotesSheet of(Packet packet, Writing writing) {
    Texts texts = writing.texts();
    List<Stage> stages = new ArrayList<>();
    for (Note.Stage stage : Note.Stage.values()) {
      List<Line> lines =
          packet.safetyNotes().during(stage).stream().map(note -> line(note, writing)).toList();
      if (!lines.isEmpty()) {
        stages.add(new Stage(texts.say("stage." + word(stage)), lines));
      }
    }
    Place place = packet.job().place();
    List<Colour> colours = colours(texts);
    int half = (colours.size() + 1) / 2;
    return new SafetyNotesSheet(
        texts.say("safety-notes.title"),
        texts.say(
            place.isUnitedStates() ? "safety-notes.scope-us" : "safety-notes.scope-elsewhere"),
        texts.say("safety-notes.caution"),
        place.calls().stream()
            .filter(call -> call.who() == Call.Who.EMERGENCY)
            .map(Call::number)
            .findFirst()
            .orElse(""),
        stages,
        lifts(packet, writing),
        texts.say(
            "safety-notes.lifts.note",
            Map.of(
                "working",
                packet.workings().numberOf("safety-notes.lift-limit").orElse(""),
                "source",
                new Sources(texts).write(List.of(new Citation("niosh-94-110", "pages 7 to 29"))))),
        packet.safetyNotes().heatTable().stream()
            .flatMap(table -> table.humidities().stream())
            .map(writing.formats()::quantity)
            .toList(),
        packet.safetyNotes().heatTable().stream()
            .flatMap(table -> table.rows().stream())
            .map(row -> heat(row, writing.formats()))
            .toList(),
        List.of(colours.subList(0, half), colours.subList(half, colours.size())));
  }

  private static List<LiftRow> lifts(Packet packet, Writing writing) {
    return packet.safetyNotes().liftings().stream().map(lifting -> lift(lifting, writing)).toList();
  }

  /** Named by the number of its working too. */
  private static LiftRow lift(Lifting lifting, Writing writing) {
    Formats formats = writing.formats();
    Map<String, String> words = new LinkedHashMap<>();
    words.put("number", lifting.limit().subject());
    words.putAll(formats.arguments(Map.of("name", lifting.name())));
    return new LiftRow(
        writing.texts().say("safety-notes.lifts.name", words),
        formats.size(lifting.from()),
        formats.size(lifting.to()),
        formats.count(lifting.perMinute()),
        mass(lifting.limit().asMass(), formats),
        mass(lifting.byRoundedFactors(), formats),
        formats.number(lifting.index().fraction(), 1));
  }

  /** To a tenth, as the publication prints it. */
  private static String mass(Mass mass, Formats formats) {
    boolean imperial = formats.units() == UnitSystem.IMPERIAL;
    return formats.in(mass, imperial ? Unit.POUND : Unit.KILOGRAM, 1);
  }

  private static HeatRow heat(HeatTable.Row row, Formats formats) {
    return new HeatRow(
        formats.temperature(row.air()),
        row.cells().stream()
            .map(
                cell ->
                    new HeatCell(cell.index().map(formats::temperature).orElse("–"), cell.danger()))
            .toList());
  }

  /** What a note asks for: the line of it that day sheets print. */
  static String action(Note note, Writing writing) {
    return writing
        .texts()
        .say("note." + note.id() + ".do", writing.formats().arguments(note.arguments()));
  }

  /** A note in words. */
  private static Line line(Note note, Writing writing) {
    Texts texts = writing.texts();
    Map<String, String> values = writing.formats().arguments(note.arguments());
    return new Line(
        action(note, writing),
        texts.say("note." + note.id() + ".why", values),
        new Sources(texts).write(note.citations()),
        FindingsSheet.decider(note.decides(), texts));
  }

  private static String word(Note.Stage stage) {
    return stage.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static List<Colour> colours(Texts texts) {
    return MarkingColour.all().stream()
        .map(
            colour ->
                new Colour(
                    texts.say("marking-colour." + colour.colour()),
                    texts.say("marking-use." + colour.use())))
        .toList();
  }
}

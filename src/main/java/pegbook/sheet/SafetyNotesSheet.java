package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.calc.safetynotes.HeatTable;
import pegbook.calc.safetynotes.Note;
import pegbook.job.Place;
import pegbook.packet.Packet;
import pegbook.published.MarkingColour;

/**
 * Safety notes and who decides, by stage of the work.
 *
 * @param title heading
 * @param scope whom the rules named here bind
 * @param caution the line of caution
 * @param stages the notes
 * @param humidities heads of the table of heat
 * @param heat its rows; none where the job says how hot it gets, or it does not
 * @param colours of marks on the ground, in two columns
 */
public record SafetyNotesSheet(
    String title,
    String scope,
    String caution,
    List<Stage> stages,
    List<String> humidities,
    List<HeatRow> heat,
    List<List<Colour>> colours)
    implements Sheet {

  /** The notes of a stage. */
  public record Stage(String heading, List<Line> lines) {}

  /** A note: what to do, why, whose word it is. */
  public record Line(String action, String reason, String source, String decides) {}

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
        stages,
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

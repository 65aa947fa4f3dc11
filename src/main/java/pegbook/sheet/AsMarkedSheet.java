package pegbook.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.asmarked.AsMarked;
import pegbook.calc.asmarked.AsMarked.Doubled;
import pegbook.calc.asmarked.AsMarked.Further;
import pegbook.calc.asmarked.AsMarked.Row;
import pegbook.calc.asmarked.AsMarked.Suspect;
import pegbook.calc.asmarked.AsMarked.Verdict;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.plan.AsMarkedPicture;

/**
 * The distances taped between painted marks: what they say, how to move a mark, what would tell.
 *
 * @param title the sheet's title
 * @param verdict what is wrong
 * @param move how to move the mark that is named; empty when none is
 * @param further distances that would tell; often none
 * @param tell what else to tape; empty when nothing
 * @param telling true when one thing cannot be named
 * @param suspect the suspect by which the further distances are foretold
 * @param picture the marks and distances; none when nothing could be used
 * @param caption under the picture
 * @param rowsWhy over the table of distances
 * @param rows the distances
 * @param test the global test, line by line
 * @param suspectsWhy over the table of suspects
 * @param suspects what explains the distances best
 * @param doubled readings that disagree
 * @param gaps what is not checked
 * @param basis what the limits rest on
 */
public record AsMarkedSheet(
    String title,
    String verdict,
    List<String> move,
    List<FurtherRow> further,
    String tell,
    boolean telling,
    String suspect,
    List<Drawing> picture,
    String caption,
    String rowsWhy,
    List<DistanceRow> rows,
    List<Fact> test,
    String suspectsWhy,
    List<SuspectRow> suspects,
    List<DoubledRow> doubled,
    List<String> gaps,
    String basis)
    implements Sheet {
  /** One distance. */
  public record DistanceRow(
      String pair,
      String planned,
      String taped,
      String difference,
      String limit,
      String residual,
      String redundancy,
      boolean beyond) {}

  /** A named figure. */
  public record Fact(String name, String value) {}

  /** One supposition. */
  public record SuspectRow(
      String name, String off, String explains, String leaves, String mayLeave, String behind) {}

  /** A distance that would tell. */
  public record FurtherRow(String pair, String expected, String otherwise) {}

  /** Readings that disagree. */
  public record DoubledRow(String pair, String least, String most, String apart) {}

  public AsMarkedSheet {
    move = List.copyOf(move);
    further = List.copyOf(further);
    picture = List.copyOf(picture);
    rows = List.copyOf(rows);
    test = List.copyOf(test);
    suspects = List.copyOf(suspects);
    doubled = List.copyOf(doubled);
    gaps = List.copyOf(gaps);
  }

  @Override
  public List<Drawing> drawings() {
    return picture;
  }

  /** Makes the sheet. */
  public static AsMarkedSheet of(Packet packet, Writing writing) {
    return new Maker(packet, packet.asMarked(), writing, new AsMarkedWords(packet, writing))
        .sheet();
  }

  private record Maker(Packet packet, AsMarked found, Writing writing, AsMarkedWords words) {
    AsMarkedSheet sheet() {
      return new AsMarkedSheet(
          say("as-marked.title"),
          words.verdict(),
          words.move(),
          found.further().stream().map(this::further).toList(),
          words.tell(),
          found.verdict() == Verdict.UNCLEAR,
          words.foretelling(),
          picture(),
          caption(),
          words.rowsWhy(),
          found.rows().stream().map(this::row).toList(),
          found.test().map(words::test).orElse(List.of()),
          words.suspectsWhy(),
          found.suspects().stream().map(this::suspect).toList(),
          found.doubled().stream().map(this::doubled).toList(),
          words.gaps(),
          words.basis());
    }

    private String say(String key) {
      return writing.texts().say(key);
    }

    private List<Drawing> picture() {
      if (found.rows().isEmpty()) {
        return List.of();
      }
      String description = say("as-marked.picture");
      Optional<String> moved =
          found
              .move()
              .map(
                  move ->
                      writing
                          .texts()
                          .say(
                              "as-marked.picture.moved",
                              Map.of("mark", move.mark(), "factor", factor())));
      return List.of(
          AsMarkedPicture.draw(
              packet.placement(),
              found,
              say("site-plan.north"),
              writing.lettering(),
              writing.page().widthMm(),
              moved.map(more -> description + " " + more).orElse(description)));
    }

    private String factor() {
      return writing
          .formats()
          .count(AsMarkedPicture.exaggeration(packet.placement(), found, writing.page().widthMm()));
    }

    private String caption() {
      return found
          .move()
          .map(
              move ->
                  writing
                      .texts()
                      .say(
                          "as-marked.picture.caption.moved",
                          Map.of("mark", move.mark(), "factor", factor())))
          .orElse(say("as-marked.picture.caption"));
    }

    private DistanceRow row(Row row) {
      return new DistanceRow(
          row.pair().name(),
          writing.formats().length(row.planned()),
          words.taped(row),
          words.signed(row.difference()),
          words.small(row.limit()),
          writing.formats().number(row.standardised(), 1),
          writing.formats().number(row.redundancy(), 2),
          row.isBeyond());
    }

    private SuspectRow suspect(Suspect suspect) {
      return new SuspectRow(
          words.name(suspect),
          words.off(suspect),
          writing.formats().number(suspect.fall(), 1),
          writing.formats().number(suspect.left(), 1),
          writing.formats().number(suspect.leftLimit(), 1),
          suspect.lead() > 0 ? writing.formats().number(suspect.lead(), 1) : "");
    }

    private FurtherRow further(Further further) {
      return new FurtherRow(
          further.pair().name(),
          writing.formats().tape(further.expected()),
          writing.formats().tape(further.otherwise()));
    }

    private DoubledRow doubled(Doubled doubled) {
      return new DoubledRow(
          doubled.pair().name(),
          writing.formats().tape(doubled.least()),
          writing.formats().tape(doubled.most()),
          words.small(doubled.limit()));
    }
  }
}

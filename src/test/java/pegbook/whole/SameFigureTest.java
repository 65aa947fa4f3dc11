package pegbook.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pegbook.testing.PdfReader;

/**
 * The right figure stands in the right row of every sheet, and a change reaches where it should.
 */
class SameFigureTest {
  @TempDir static Path folder;
  private static SheetTexts before = new SheetTexts(java.util.Map.of());
  private static SheetTexts deeper = before;
  private static SheetTexts turned = before;

  @BeforeAll
  static void print() throws IOException {
    before = binder(Printing.packet("sky-deck"));
    // Depths that no other hole has: 65 in = 5' 5" to the concrete, 68 in = 5' 8" to the bottom.
    deeper = changed("deeper", job -> pier(job).put("depth", "65 in").put("gravel", "3 in"));
    turned =
        changed(
            "turned", job -> ((ObjectNode) job.get("layout")).put("centreToFirstMark", "21 deg"));
  }

  private static ObjectNode pier(ObjectNode job) {
    return (ObjectNode) job.get("piers").get(0);
  }

  private static SheetTexts changed(String name, Consumer<ObjectNode> change) throws IOException {
    ObjectMapper json = new ObjectMapper();
    ObjectNode job = (ObjectNode) json.readTree(Printing.INPUT.resolve("sky-deck.json").toFile());
    change.accept(job);
    Path file = folder.resolve(name + ".json");
    Files.writeString(file, job.toPrettyString());
    Printing.Said said = Printing.run("print", file.toString(), "--output", folder.toString());
    assertThat(said.code()).as(said.err()).isZero();
    return binder(folder.resolve(name));
  }

  private static SheetTexts binder(Path packet) {
    return SheetTexts.of(PdfReader.read(Printing.bytes(packet.resolve("binder.pdf"))));
  }

  @Test
  void theSameDepthStandsOnScheduleSectionSteelAndDaySheet() throws IOException {
    String dug = "5′ 8″";
    String concrete = "5′ 5″";
    assertThat(deeper.row("Dig schedule", "P1")).contains(dug, concrete);
    assertThat(deeper.drawn("Dig schedule")).contains(dug, concrete);
    assertThat(deeper.drawn("Steel")).contains(concrete);
    assertThat(daySheetsRows("P1")).anyMatch(row -> row.contains(dug));
    for (String support : List.of("S1", "S2", "S3", "S4", "S5", "S6")) {
      assertThat(deeper.row("Dig schedule", support)).doesNotContain(dug, concrete);
      assertThat(daySheetsRows(support)).noneMatch(row -> row.contains(dug));
    }
    assertThat(before.words("Dig schedule")).doesNotContain(dug, concrete);
  }

  /** The rows of a hole on the day sheets that are printed each by itself. */
  private static List<String> daySheetsRows(String hole) {
    return Printing.documents(folder.resolve("deeper")).stream()
        .filter(file -> file.getFileName().toString().startsWith("day-"))
        .map(file -> SheetTexts.of(PdfReader.read(Printing.bytes(file))))
        .flatMap(day -> day.bySheet().keySet().stream().flatMap(sheet -> day.rows(sheet, hole)))
        .toList();
  }

  @Test
  void aDeeperPierReachesItsSheetsAndNoOther() {
    assertThat(changed(before, deeper))
        .contains("Dig schedule", "Concrete and gravel", "Steel", "Workings")
        .doesNotContain("Marking out with two tapes");
  }

  @Test
  void aTurnedFigureReachesThePlanAndNeitherConcreteNorSteel() {
    assertThat(changed(before, turned))
        .contains("Site plan", "Workings")
        .doesNotContain("Concrete and gravel", "Steel");
  }

  private static Set<String> changed(SheetTexts one, SheetTexts two) {
    Set<String> sheets = new TreeSet<>(one.bySheet().keySet());
    sheets.addAll(two.bySheet().keySet());
    sheets.removeIf(sheet -> one.words(sheet).equals(two.words(sheet)));
    return sheets;
  }
}

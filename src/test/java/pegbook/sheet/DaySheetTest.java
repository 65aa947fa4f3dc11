package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Task;
import pegbook.packet.Packet;
import pegbook.sheet.DaySheet.DigRow;
import pegbook.sheet.DaySheet.FillRow;
import pegbook.sheet.DaySheet.PourRow;
import pegbook.sheet.DaySheet.Tick;
import pegbook.testing.PrintedDocument;
import pegbook.testing.PrintedJob;
import pegbook.testing.PrintedPage;
import pegbook.testing.PrintedTable;
import pegbook.testing.TextRun;
import pegbook.testing.TrialPacket;

/** Day sheets, printed and read back; and the rows of the days of made-up jobs. */
class DaySheetTest {
  private static final PrintedJob DECK = PrintedJob.example("sky-deck");
  private static final PrintedJob HUT = PrintedJob.example("forest-hut");

  static Stream<TrialPacket> packets() {
    return Stream.concat(TrialPacket.examples(), TrialPacket.made(50));
  }

  private static Packet packet(String example) {
    return TrialPacket.example(Path.of("input", example + ".json")).packet();
  }

  /** The table of a day that begins with a word, or none. */
  private static List<PrintedTable> table(PrintedDocument day, String first) {
    return PrintedTable.of(day).stream()
        .filter(table -> !table.heads().isEmpty() && table.heads().get(0).equals(first))
        .toList();
  }

  /** Names in a table of a day, without what stands beside them: "S3 begin" is S3. */
  private static List<String> names(PrintedDocument day, String first) {
    return table(day, first).stream()
        .flatMap(table -> table.names().stream())
        .map(name -> name.split(" ", -1)[0])
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void aSheetHoldsTheHolesOfItsDayAndNoOther(String example) {
    List<WorkDay> days = packet(example).dayPlan().days();
    List<PrintedDocument> sheets = PrintedJob.example(example).days();
    assertThat(sheets).hasSameSizeAs(days);
    for (int i = 0; i < days.size(); i++) {
      WorkDay day = days.get(i);
      PrintedDocument sheet = sheets.get(i);
      assertThat(names(sheet, "Dig hole")).isEqualTo(day.holes(Task.Kind.DIG));
      assertThat(names(sheet, "Pour hole")).isEqualTo(day.holes(Task.Kind.POUR));
      List<String> filled = new ArrayList<>(names(sheet, "Fill hole"));
      filled.addAll(gravelBesideDigging(sheet));
      assertThat(filled)
          .doesNotHaveDuplicates()
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(
                      day.holes(Task.Kind.GRAVEL).stream(), day.holes(Task.Kind.STEEL).stream())
                  .distinct()
                  .toList());
    }
  }

  private static List<String> gravelBesideDigging(PrintedDocument sheet) {
    return table(sheet, "Dig hole").stream()
        .filter(table -> table.heads().contains("Tamped"))
        .flatMap(
            table -> table.names().stream().filter(name -> !table.cell(name, "Tamped").isEmpty()))
        .map(name -> name.split(" ", -1)[0])
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void everyHoleIsDugAndPouredOnOneDay(String example) {
    List<PrintedDocument> sheets = PrintedJob.example(example).days();
    List<String> marks =
        packet(example).placement().marks().stream().map(mark -> mark.id()).toList();
    // A hole that flows over into the next day stands on both; one that was dug is not dug again.
    assertThat(sheets.stream().flatMap(sheet -> names(sheet, "Dig hole").stream()).distinct())
        .containsExactlyInAnyOrderElementsOf(left(packet(example)));
    assertThat(sheets.stream().flatMap(sheet -> names(sheet, "Pour hole").stream()).distinct())
        .containsExactlyInAnyOrderElementsOf(marks);
  }

  /** Holes that are not dug down to their depth target, by what the job file says of them. */
  private static List<String> left(Packet packet) {
    return packet.depthTargets().holes().stream()
        .filter(
            hole ->
                packet
                    .job()
                    .field()
                    .dug(hole.mark())
                    .filter(pegbook.job.Field.Dug::isDown)
                    .map(dug -> dug.depth().filter(hole.depth()::isMoreThan).isPresent())
                    .orElse(true))
        .map(pegbook.figures.Hole::mark)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void figuresAreThoseOfTheBindersSheets(String example) {
    PrintedJob job = PrintedJob.example(example);
    PrintedTable schedule = PrintedTable.headed(job.tables("Dig schedule"), "No.");
    PrintedTable concrete = PrintedTable.headed(job.tables("Concrete and gravel"), "Hole");
    for (PrintedDocument day : job.days()) {
      for (PrintedTable dig : table(day, "Dig hole")) {
        for (String row : dig.names()) {
          String hole = row.split(" ", -1)[0];
          assertThat(dig.cell(row, "Wide")).isEqualTo(schedule.cell(hole, "Across"));
          assertThat(dig.cell(row, "Dig to")).isEqualTo(schedule.cell(hole, "Dig to, bare bottom"));
          if (dig.heads().contains("Below datum")) {
            assertThat(dig.cell(row, "Below datum"))
                .isEqualTo(schedule.cell(hole, "Line to bottom"));
          }
        }
      }
      for (PrintedTable fill : table(day, "Fill hole")) {
        for (String hole : fill.names()) {
          if (fill.heads().contains("Loose") && !fill.cell(hole, "Loose").isEmpty()) {
            assertThat(fill.cell(hole, "Loose")).isEqualTo(concrete.cell(hole, "Gravel, loose"));
            // A hole that was dug gets what it then needs; the sheet "As dug" tells why.
            if (!dug(example).contains(hole)) {
              assertThat(fill.cell(hole, "Gravel tamped")).isEqualTo(schedule.cell(hole, "Gravel"));
            }
          }
        }
      }
      for (PrintedTable pour : table(day, "Pour hole")) {
        for (String hole : pour.names()) {
          if (pour.heads().contains("Bags")) {
            assertThat(pour.cell(hole, "Bags")).isEqualTo(concrete.cell(hole, "Bags"));
          } else {
            assertThat(pour.cell(hole, "Concrete")).isEqualTo(concrete.cell(hole, "To mix"));
          }
          assertThat(pour.cell(hole, "Minutes").replace(" – ", " to "))
              .isEqualTo(concrete.cell(hole, "Pour, minutes"));
        }
      }
    }
  }

  private static List<String> dug(String example) {
    return packet(example).job().field().dug().stream().map(pegbook.job.Field.Dug::hole).toList();
  }

  /** Inches and feet, or millimetres and litres: from the job files, by the pencil. */
  @Test
  void unitsAreThoseOfTheJob() {
    PrintedTable deck = table(DECK.days().get(0), "Dig hole").get(0);
    assertThat(deck.cell("P1", "Wide")).isEqualTo("22″");
    assertThat(deck.cell("P1", "Dig to")).isEqualTo("4′ 10″");
    PrintedTable hut = table(HUT.days().get(0), "Dig hole").get(0);
    assertThat(hut.cell("S3", "Wide")).isEqualTo("400 mm");
    assertThat(hut.cell("S3", "Dig to")).isEqualTo("1 300 mm");
    HUT.days().forEach(day -> assertThat(day.text()).doesNotContainPattern("[″′]|\\d (ft|lb)"));
    DECK.days().forEach(day -> assertThat(day.text()).doesNotContainPattern("\\d (mm|kg|L|m)\\b"));
  }

  /** A deeper pier changes the pier's cells and no other hole's, on whatever day they stand. */
  @Test
  void aDeeperPierChangesItsOwnRows() {
    PrintedJob deeper =
        PrintedJob.example(
            "sky-deck",
            "deeper-pier",
            job -> ((ObjectNode) job.at("/piers/0")).put("depth", "58 1/2 in"));
    Map<String, Set<String>> before = cells(DECK);
    Map<String, Set<String>> after = cells(deeper);
    assertThat(after.keySet()).isEqualTo(before.keySet());
    for (String hole : before.keySet()) {
      if (hole.equals("P1")) {
        assertThat(before.get(hole)).contains("4′ 10″", "5′ 6″").doesNotContain("4′ 10 ¹⁄₂″");
        assertThat(after.get(hole)).contains("4′ 10 ¹⁄₂″", "5′ 6 ¹⁄₂″").doesNotContain("4′ 10″");
      } else {
        assertThat(after.get(hole)).isEqualTo(before.get(hole));
      }
    }
  }

  /** What stands in the rows of a hole over all days, beside its name. */
  private static Map<String, Set<String>> cells(PrintedJob job) {
    Map<String, Set<String>> cells = new TreeMap<>();
    for (PrintedDocument day : job.days()) {
      PrintedTable.of(day).stream()
          .filter(table -> !table.heads().isEmpty())
          .flatMap(table -> table.rows().stream())
          .forEach(
              row ->
                  cells
                      .computeIfAbsent(row.get(0).split(" ", -1)[0], any -> new TreeSet<>())
                      .addAll(row.subList(1, row.size())));
    }
    return cells;
  }

  /** The names by which filled sheets are read back are for good. */
  @Test
  void namesOfFieldsStay() {
    List<String> names = fields(DECK);
    assertThat(names).doesNotHaveDuplicates();
    assertThat(names)
        .contains(
            "day-1.job.mark-out",
            "day-1.job.prove",
            "day-1.tool.tapes",
            "day-1.tool.hand-auger",
            "day-1.P1.depth",
            "day-1.P1.bottom",
            "day-1.P1.moved",
            "day-1.P1.done",
            "day-3.S1.gravel",
            "day-3.S1.gravel-done",
            "day-5.job.inspection",
            "day-5.P1.bags",
            "day-5.P1.top",
            "day-5.P1.poured",
            "day-1.leaving.covered",
            "day-7.leaving.written")
        .anyMatch(name -> name.matches("day-[23]\\.S1\\.steel-done"));
    PrintedJob renamed =
        PrintedJob.example(
            "sky-deck",
            "other-words",
            job -> {
              job.put("title", "Another name altogether").put("owner", "someone else");
              ((ObjectNode) job.at("/tools/2")).put("name", "the long auger of the neighbour");
            });
    assertThat(fields(renamed)).isEqualTo(names);
  }

  private static List<String> fields(PrintedJob job) {
    return job.days().stream()
        .flatMap(day -> day.fields().stream())
        .map(PrintedPage.Field::name)
        .toList();
  }

  /** A field to fill in for S3 stands on the line of S3, and right of its name. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void fieldsStandInTheRowOfTheirHole(String example) {
    Set<String> marks =
        Set.copyOf(packet(example).placement().marks().stream().map(mark -> mark.id()).toList());
    int held = 0;
    for (PrintedDocument day : PrintedJob.example(example).days()) {
      for (PrintedPage page : day.pages()) {
        for (PrintedPage.Field field : page.fields()) {
          String mark = field.name().split("\\.", -1)[1];
          if (marks.contains(mark)) {
            assertThat(page.body()).as(field.name()).anyMatch(run -> isHeadOf(run, mark, field));
            held++;
          }
        }
      }
    }
    assertThat(held).isGreaterThan(3 * marks.size());
  }

  private static boolean isHeadOf(TextRun run, String mark, PrintedPage.Field field) {
    double middle = run.box().centre().y();
    return run.text().strip().equals(mark)
        && run.isUnder("TH")
        && run.box().right() < field.box().left()
        && middle > field.box().bottom() - 1
        && middle < field.box().top() + 1;
  }

  /**
   * A helper with the day's sheet alone knows what "4 A" is: every mark in a row has its line
   * below, cut as on the bar list; over all days the pieces are those of the bar list.
   */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck"})
  void barsOfADayAreToldWhereTheyAreSet(String example) {
    PrintedJob job = PrintedJob.example(example);
    PrintedTable list = PrintedTable.headed(job.tables("Steel"), "Mark");
    Map<String, Integer> pieces = new TreeMap<>();
    // Steel that goes on from an earlier day is told and counted on that day's sheet.
    Set<String> begun = new HashSet<>();
    for (PrintedDocument day : job.days()) {
      Map<String, Integer> inRows = new TreeMap<>();
      for (PrintedTable fill : table(day, "Fill hole")) {
        if (fill.heads().contains("Bars")) {
          fill.rows().stream()
              .filter(row -> !BARS.matcher(String.join(" + ", row)).find() || begun.add(row.get(0)))
              .flatMap(row -> row.stream())
              .flatMap(cell -> BARS.matcher(cell).results())
              .filter(bar -> list.names().contains(bar.group(2)))
              .forEach(
                  bar -> inRows.merge(bar.group(2), Integer.valueOf(bar.group(1)), Integer::sum));
        }
      }
      String text = String.join(" ", day.lines());
      inRows.forEach(
          (mark, count) ->
              assertThat(text)
                  .containsPattern(
                      Pattern.quote(mark + ": " + count + " ")
                          + "[^:]*"
                          + Pattern.quote(list.cell(mark, "Size"))
                          + "[^:]*"
                          + Pattern.quote(list.cell(mark, "Cut"))));
      inRows.forEach((mark, count) -> pieces.merge(mark, count, Integer::sum));
    }
    assertThat(pieces.keySet()).containsExactlyElementsOf(list.names());
    pieces.forEach(
        (mark, count) -> assertThat(list.cell(mark, "Pieces")).isEqualTo(String.valueOf(count)));
  }

  private static final Pattern BARS = Pattern.compile("(\\d+) ([A-Z]+)(?= \\+|$)");

  /** One side of paper, nothing on it under 11 pt, its strip included. */
  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void aDayOfTheExamplesIsOneSideInLargeType(String example) {
    for (PrintedDocument day : PrintedJob.example(example).days()) {
      assertThat(day.pages()).hasSize(1);
      assertThat(day.pages().get(0).runs()).allMatch(run -> run.size() >= 11);
    }
  }

  @Test
  void theStripKeepsItsFields() {
    String strip = String.join(" ", DECK.days().get(1).lines());
    String hash = packet("sky-deck").jobHash().substring(0, 8);
    assertThat(strip)
        .contains(
            "Sky deck, Alder Hollow",
            "Day 2",
            "Rev. B",
            "Issued 2027-04-12",
            "Page 1 of 1",
            "File " + hash);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void theWorkStandsInItsOrder(String example) {
    for (PrintedDocument day : PrintedJob.example(example).days()) {
      String text = String.join(" ", day.lines());
      assertThat(text).contains("Today, in this order", "Three dangers today");
      // An earlier lot is poured and stripped before the next one is dug.
      List<Integer> opening =
          places(text, ". Mark out", ". Dig ", ". Gravel into ", ". Set forms", ". Steel into ");
      List<Integer> closing = places(text, ". Hold", ". Pour ", ". Strip ");
      assertThat(opening).isSorted();
      assertThat(closing).isSorted();
      List<Integer> beside =
          places(text, ". Posts, beams", ". Boards", ". Trench R", ". Sand", ". Fill the trench");
      assertThat(opening.size() + closing.size() + beside.size()).isPositive();
    }
  }

  private static List<Integer> places(String text, String... steps) {
    return Stream.of(steps).map(text::indexOf).filter(place -> place >= 0).toList();
  }

  @ParameterizedTest
  @MethodSource("packets")
  void everyDayOfEveryJobHasItsRowsItsDangersAndNamesOfItsOwn(TrialPacket trial) {
    Packet packet = trial.packet();
    List<String> finished = new ArrayList<>();
    List<String> poured = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (WorkDay day : packet.dayPlan().days()) {
      DayRows rows = new DayRows(packet, trial.writing(), day);
      DayWords words = new DayWords(packet, trial.writing(), day);
      assertThat(rows.dig()).extracting(DigRow::mark).isEqualTo(day.holes(Task.Kind.DIG));
      assertThat(rows.pour())
          .extracting(PourRow::mark)
          .containsExactlyInAnyOrderElementsOf(day.poured());
      assertThat(
              rows.fillTables().stream()
                  .flatMap(table -> table.lines().stream())
                  .flatMap(line -> line.holes().stream()))
          .filteredOn(row -> !row.mark().isEmpty())
          .containsExactlyInAnyOrderElementsOf(rows.fill());
      assertThat(words.dangers()).hasSize(3).doesNotHaveDuplicates();
      assertThat(words.steps()).isNotEmpty();
      rows.dig().stream()
          .filter(row -> row.remark().isEmpty() || row.remark().equals("finish"))
          .forEach(row -> finished.add(row.mark()));
      poured.addAll(day.holes(Task.Kind.POUR));
      names.addAll(ticks(packet, trial.writing(), day, words));
    }
    List<String> marks = packet.placement().marks().stream().map(mark -> mark.id()).toList();
    assertThat(finished).containsExactlyInAnyOrderElementsOf(left(packet));
    assertThat(poured).containsExactlyInAnyOrderElementsOf(marks);
    assertThat(names).doesNotHaveDuplicates().allMatch(name -> name.matches("[a-z0-9.-]+"));
  }

  private static List<String> ticks(Packet packet, Writing writing, WorkDay day, DayWords words) {
    List<Tick> ticks = new ArrayList<>(new DayTools(packet, writing, day).ticks());
    words.steps().forEach(step -> ticks.addAll(step.ticks()));
    ticks.addAll(words.leaving());
    return ticks.stream().map(Tick::name).toList();
  }

  /** Gravel into a hole that is dug on the same day stands in its row, once. */
  @Test
  void gravelStandsBesideTheDiggingOrInItsOwnTable() {
    int beside = 0;
    for (TrialPacket trial : packets().toList()) {
      for (WorkDay day : trial.packet().dayPlan().days()) {
        DayRows rows = new DayRows(trial.packet(), trial.writing(), day);
        List<String> gravel =
            new ArrayList<>(
                rows.dig().stream()
                    .filter(row -> !row.gravel().isEmpty())
                    .map(DigRow::mark)
                    .toList());
        beside += gravel.size();
        gravel.addAll(
            rows.fill().stream()
                .filter(row -> !row.gravel().isEmpty())
                .map(FillRow::mark)
                .toList());
        assertThat(gravel).containsExactlyInAnyOrderElementsOf(day.holes(Task.Kind.GRAVEL));
      }
    }
    assertThat(beside).isPositive();
  }
}

package pegbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.calc.dayplan.DayPlan.WorkDay;
import pegbook.figures.Task;
import pegbook.packet.Packet;
import pegbook.testing.PageCheck;
import pegbook.testing.PrintedDocument;
import pegbook.testing.PrintedJob;
import pegbook.testing.PrintedPage;
import pegbook.testing.PrintedTable;
import pegbook.testing.Rules;
import pegbook.testing.TrialPacket;

/** Hold sheets of the days of pouring, printed and read back. */
class PourDaySheetTest {
  private static Packet packet(String example) {
    return TrialPacket.example(Path.of("input", example + ".json")).packet();
  }

  private static List<WorkDay> pourDays(String example) {
    return packet(example).dayPlan().days().stream()
        .filter(day -> day.has(Task.Kind.POUR))
        .toList();
  }

  private static PrintedDocument sheet(PrintedJob job, WorkDay day, String ending) {
    return job.document("pour-" + day.number() + ending);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void aSheetHoldsTheHolesOfItsPourWithTheBindersFigures(String example) {
    PrintedJob job = PrintedJob.example(example);
    PrintedTable schedule = PrintedTable.headed(job.tables("Dig schedule"), "No.");
    List<String> poured = new ArrayList<>();
    for (WorkDay day : pourDays(example)) {
      PrintedTable holes = PrintedTable.headed(PrintedTable.of(sheet(job, day, "")), "Hole");
      assertThat(holes.names()).isEqualTo(day.holes(Task.Kind.POUR));
      poured.addAll(holes.names());
      for (String hole : holes.names()) {
        assertThat(holes.cell(hole, "Underside at"))
            .isEqualTo(schedule.cell(hole, "Depth target, underside of concrete"));
      }
    }
    assertThat(poured)
        .containsExactlyInAnyOrderElementsOf(
            packet(example).placement().marks().stream().map(mark -> mark.id()).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sky-deck", "forest-hut", "hillside-deck", "smallest"})
  void aSheetIsOneGoodSide(String example) {
    PrintedJob job = PrintedJob.example(example);
    for (WorkDay day : pourDays(example)) {
      PrintedDocument sheet = sheet(job, day, "");
      assertThat(sheet.pages()).hasSize(1);
      assertThat(PageCheck.problems(sheet, Rules.daySheet())).isEmpty();
    }
  }

  @Test
  void aSheetInSpanishIsAsGoodAndHasTheSameFields() {
    PrintedJob job = PrintedJob.example("sky-deck");
    for (WorkDay day : pourDays("sky-deck")) {
      PrintedDocument english = sheet(job, day, "");
      PrintedDocument spanish = sheet(job, day, "-es");
      assertThat(spanish.pages()).hasSize(1);
      assertThat(PageCheck.problems(spanish, Rules.daySheet())).isEmpty();
      assertThat(names(spanish)).isEqualTo(names(english));
      assertThat(spanish.text()).contains("Antes de vaciar").doesNotContain("Before", "batch");
    }
  }

  private static List<String> names(PrintedDocument sheet) {
    return sheet.fields().stream().map(PrintedPage.Field::name).sorted().toList();
  }

  /** The names by which filled sheets are read back are for good. */
  @Test
  void namesOfFieldsStay() {
    assertThat(names(PrintedJob.example("sky-deck").document("pour-5")))
        .doesNotHaveDuplicates()
        .contains(
            "pour-5.P1.depth",
            "pour-5.P1.bottom",
            "pour-5.P1.steel",
            "pour-5.P1.tube",
            "pour-5.P1.top",
            "pour-5.P1.sleeve",
            "pour-5.P1.anchors",
            "pour-5.ready.seen",
            "pour-5.ready.weather",
            "pour-5.after.cover",
            "pour-5.after.load");
  }

  /** 35 bags by one person with a hoe do not go in within an hour and a half. */
  @Test
  void aPourThatDoesNotFitStops() {
    PrintedJob slow =
        PrintedJob.example(
            "sky-deck",
            "slow-pour",
            job -> {
              job.withObjectProperty("concrete").put("mixing", "by hand");
              job.withObjectProperty("crew").put("people", 1);
            });
    int day = dayOf(slow);
    String text = String.join(" ", slow.document("pour-" + day).lines());
    assertThat(text).contains("STOP", "does not fit", "a joint");
    assertThat(PrintedJob.example("sky-deck").document("pour-5").text())
        .contains("May run over", "Fits as planned")
        .doesNotContain("does not fit");
  }

  private static int dayOf(PrintedJob job) {
    for (int day = 1; day <= job.days().size(); day++) {
      boolean pours =
          PrintedTable.of(job.days().get(day - 1)).stream()
              .anyMatch(
                  table -> table.heads().contains("Pour hole") && table.names().contains("P1"));
      if (pours) {
        return day;
      }
    }
    throw new IllegalStateException("P1 is never poured");
  }
}

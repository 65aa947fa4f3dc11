package pegbook.jobfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Plan;
import pegbook.job.Tool;

/** The plan against the rest of the job: dates want a start, a boring machine an auger. */
final class PlanChecks {
  private PlanChecks() {}

  static void look(Fields job, Report report) {
    Optional<Fields> plan = report.object(JobKeys.PLAN.name());
    Optional<Fields> crew = report.object(JobKeys.CREW.name());
    if (plan.isEmpty() || crew.isEmpty()) {
      return;
    }
    if (!crew.get().has(WorkKeys.START)) {
      for (Key<?> dated : List.of(PlanKeys.MACHINE, PlanKeys.DEADLINE)) {
        if (plan.get().find(dated).isPresent()) {
          report.complain(plan.get().node(dated), Complaint.PLAN_WITHOUT_START, Map.of());
        }
      }
    }
    boolean bores =
        plan.get()
            .find(PlanKeys.MACHINE)
            .filter(machine -> machine.purpose() == Plan.Purpose.DIGGING)
            .isPresent();
    Optional<List<Tool>> tools = job.find(ToolKeys.TOOLS);
    if (bores
        && tools.isPresent()
        && tools.get().stream().noneMatch(tool -> tool.kind() == Tool.Kind.POWER_AUGER)) {
      report.complain(plan.get().node(PlanKeys.MACHINE), Complaint.MACHINE_WITHOUT_AUGER, Map.of());
    }
  }
}

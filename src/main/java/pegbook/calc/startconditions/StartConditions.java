package pegbook.calc.startconditions;

import java.util.List;
import pegbook.figures.Finding;
import pegbook.figures.Result;
import pegbook.figures.Working;

/** What must be settled before the work starts; findings only. */
public record StartConditions(List<Finding> findings) implements Result {
  public StartConditions {
    findings = List.copyOf(findings);
  }

  @Override
  public List<Working> workings() {
    return List.of();
  }
}

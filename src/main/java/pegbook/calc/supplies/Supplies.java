package pegbook.calc.supplies;

import java.util.List;
import pegbook.figures.Finding;
import pegbook.figures.Need;
import pegbook.figures.Result;
import pegbook.figures.Working;

/**
 * What the sheets tell people to use and no other subject counts.
 *
 * @param findings none yet: a count asks nothing
 * @param workings a step for each count that is more than a number of pieces
 * @param needs what is bought
 */
public record Supplies(List<Finding> findings, List<Working> workings, List<Need> needs)
    implements Result {
  public Supplies {
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    needs = List.copyOf(needs);
  }
}

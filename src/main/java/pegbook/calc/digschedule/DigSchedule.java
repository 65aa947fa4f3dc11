package pegbook.calc.digschedule;

import java.util.List;
import pegbook.figures.DigWork;
import pegbook.figures.Finding;
import pegbook.figures.Hole;
import pegbook.figures.Result;
import pegbook.figures.SpoilHeap;
import pegbook.figures.ToolStep;
import pegbook.figures.Working;
import pegbook.measure.Mass;
import pegbook.measure.Volume;

/**
 * How the holes are dug and where their soil goes.
 *
 * @param rows one for each hole, in the order of digging
 * @param totals of all rows
 * @param soil what the dug soil is like
 * @param edge how far heaps stay from holes
 * @param heapSpots where heaps, tarps or carts stand, in the order of digging; the tip last
 * @param digging what each hole asks for, in the order of digging
 */
public record DigSchedule(
    List<Row> rows,
    Totals totals,
    DugSoil soil,
    EdgeRule edge,
    List<HeapSpot> heapSpots,
    List<Finding> findings,
    List<Working> workings,
    List<DigWork> digging)
    implements Result {
  public DigSchedule {
    rows = List.copyOf(rows);
    heapSpots = List.copyOf(heapSpots);
    findings = List.copyOf(findings);
    workings = List.copyOf(workings);
    digging = List.copyOf(digging);
  }

  /**
   * One hole.
   *
   * @param order its place in the order of digging, from 1
   * @param hole the hole
   * @param bank volume of the soil as it lies in the ground
   * @param loose volume of the same soil once dug
   * @param cartLoads whole cart loads
   * @param mass mass of the soil, dry
   * @param kept of the loose soil, what is tamped in again round a tube
   * @param tools which tool for which stretch, from the top down
   */
  public record Row(
      int order,
      Hole hole,
      Volume bank,
      Volume loose,
      long cartLoads,
      Mass mass,
      Volume kept,
      List<ToolStep> tools) {
    public Row {
      tools = List.copyOf(tools);
    }
  }

  /**
   * All holes together.
   *
   * @param cartLoads with carts filled up from hole to hole: not more than the sum of the rows
   * @param kept of the loose soil, what is tamped in again round tubes
   */
  public record Totals(Volume bank, Volume loose, long cartLoads, Mass mass, Volume kept) {
    /** Loose soil that is left over, to spread or to carry away. */
    public Volume left() {
      return loose.minus(kept);
    }
  }

  /** The row of a mark; for a mark without a hole: {@link IllegalArgumentException}. */
  public Row row(String mark) {
    return rows.stream()
        .filter(row -> row.hole().mark().equals(mark))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hole at " + mark));
  }

  /** The heaps, for the site plan. */
  public List<SpoilHeap> heaps() {
    return heapSpots.stream().map(HeapSpot::heap).toList();
  }
}

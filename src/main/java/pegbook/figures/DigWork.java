package pegbook.figures;

import java.util.List;
import pegbook.measure.Length;
import pegbook.measure.Volume;

/**
 * What digging one hole asks for.
 *
 * @param hole the hole
 * @param loose volume of its soil once dug
 * @param tools which tool for which stretch, from the top down
 * @param haul how far its soil is carried, one way; where it has no place yet, as far as the
 *     published rates go
 */
public record DigWork(Hole hole, Volume loose, List<ToolStep> tools, Length haul) {
  public DigWork {
    tools = List.copyOf(tools);
  }
}

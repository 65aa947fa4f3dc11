package pegbook.sheet;

import java.util.List;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Drawing;

/**
 * The power line: route, trench, conductors, what to keep to and whom to ask.
 *
 * @param title heading
 * @param lead the circuit in a sentence
 * @param legs of the route
 * @param lengths of trench and conductors
 * @param section through the trench
 * @param caption under it
 * @param stretches of the trench by what lies over it
 * @param pick why the cover is what it is
 * @param facts of the trench
 * @param chosen the conductors in words; what would do where none does
 * @param sizes table of sizes against drop
 * @param solidToo whether solid conductors have values of their own
 * @param sizesRule how the table is read
 * @param supplies the same load at other voltages
 * @param rules what to keep to in the trench
 * @param wires what to keep to with conductors, and what electricians decide
 */
public record PowerLineSheet(
    String title,
    String lead,
    List<LegRow> legs,
    List<String> lengths,
    Drawing section,
    String caption,
    List<StretchRow> stretches,
    List<String> pick,
    List<Fact> facts,
    List<String> chosen,
    List<SizeRow> sizes,
    boolean solidToo,
    String sizesRule,
    List<SupplyRow> supplies,
    List<String> rules,
    List<String> wires)
    implements Sheet {
  /** A leg of the route. */
  public record LegRow(String leg, String from, String to, String towards, String length) {}

  /** A stretch of the trench. */
  public record StretchRow(
      String label, String over, String length, String cover, String depth, String rule) {}

  /** A size of the trench, named with the number of its working. */
  public record Fact(String what, String value) {}

  /** A size of conductor: what it bears and loses in each metal and make. */
  public record SizeRow(
      String size,
      String copper,
      String copperStranded,
      String copperSolid,
      String aluminium,
      String aluminiumStranded,
      String aluminiumSolid,
      String verdict,
      String style) {}

  /** The load at another voltage. */
  public record SupplyRow(String voltage, String current, String lost, String smallest) {}

  @Override
  public List<Drawing> drawings() {
    return List.of(section);
  }

  /** Whether the job has power. */
  public static boolean isWanted(Packet packet) {
    return packet.powerLine().line().isPresent();
  }

  /** Makes the sheet. */
  public static PowerLineSheet of(Packet packet, Writing writing) {
    return new PowerLineWords(packet, writing).sheet();
  }
}

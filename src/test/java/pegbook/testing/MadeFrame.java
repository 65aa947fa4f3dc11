package pegbook.testing;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Made-up frames; told by the job's number, so that no chance shifts. */
final class MadeFrame {
  private static final List<String> SPECIES =
      List.of(
          "southern pine", "douglas fir larch", "hem fir", "spruce pine fir", "redwood or cedar");

  private final ObjectNode job;
  private final int number;
  private final boolean imperial;

  MadeFrame(ObjectNode job, int number, boolean imperial) {
    this.job = job;
    this.number = number;
    this.imperial = imperial;
  }

  /** Two jobs with a floor in three have a frame. */
  void frame() {
    if (number % 3 == 2 || !(job.get("floor") instanceof ObjectNode floor)) {
      return;
    }
    ObjectNode frame = floor.putObject("frame");
    if (imperial) {
      frame.put("species", SPECIES.get(number % SPECIES.size()));
    } else {
      frame
          .putObject("values")
          .put("class", "C24")
          .put("from", LongNames.AUTHORITIES.get(number % LongNames.AUTHORITIES.size()))
          .put("bending", "7.5 MPa")
          .put("shear", "0.7 MPa")
          .put("bearing", "1.9 MPa")
          .put("compression", "7.9 MPa")
          .put("stiffness", "10800 MPa");
    }
    frame.put("joistSpacing", imperial ? "12 in" : "300 mm");
    if (number % 4 == 0) {
      frame.putArray("joistsAlong").add("S1").add("S2");
      frame.put("exposure", "indoors");
    }
    if (number % 6 == 1) {
      frame.put("beamPlies", 3);
      frame.put("treatment", "not incised");
      frame.putObject("boards").put("laid", "diagonal").put("thickness", "1 1/2 in");
    }
    if (number % 6 == 4 && job.get("stock") instanceof ObjectNode stock) {
      stock
          .putArray("timber")
          .addObject()
          .put("size", imperial ? "2x8" : "48x198")
          .put("length", imperial ? "12 ft" : "4.2 m")
          .put("count", 3);
    }
  }
}

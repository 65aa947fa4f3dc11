package pegbook.testing;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Made-up design basis; told by the job's number, so that no chance shifts. */
final class MadeDesign {
  private static final List<String> SEISMIC = List.of("A", "D0", "low", "C", "E");
  private static final List<String> RISK = List.of("II", "CC1", "III");

  private final ObjectNode job;
  private final int number;
  private final boolean imperial;

  MadeDesign(ObjectNode job, int number, boolean imperial) {
    this.job = job;
    this.number = number;
    this.imperial = imperial;
  }

  /** Two jobs in three know something of it, one in six all of it. */
  void design() {
    ground();
    if (number % 3 == 0) {
      return;
    }
    boolean all = number % 6 == 1;
    String from = LongNames.AUTHORITIES.get(number % LongNames.AUTHORITIES.size());
    ObjectNode design = job.putObject("design");
    design
        .putObject("code")
        .put("edition", LongNames.cut("the code as it was adopted " + from))
        .put("from", from);
    if (all || number % 2 == 0) {
      ObjectNode occupancy = design.putObject("occupancy").put("group", "beside a dwelling");
      if (number % 4 != 0) {
        occupancy.put("category", RISK.get(number % RISK.size()));
      }
      occupancy.put("from", from);
    }
    if (all || number % 5 == 2) {
      design
          .putObject("wind")
          .put(
              "speed",
              imperial
                  ? 90 + number % JobMaker.ROUND + " mph"
                  : 80 + number % JobMaker.ROUND + " km/h")
          .put("exposure", imperial ? "C" : "III")
          .put("from", from);
      design
          .putObject("seismic")
          .put("category", SEISMIC.get(number % SEISMIC.size()))
          .put("from", from);
    }
    if (all) {
      design.putObject("salt").put("found", "none").put("from", from);
      design.putObject("lateral").put("path", LongNames.LONGEST).put("from", from);
    }
  }

  private void ground() {
    if (number % 4 == 2 && job.get("ground") instanceof ObjectNode ground) {
      String from = LongNames.AUTHORITIES.get(number % LongNames.AUTHORITIES.size());
      ground
          .putObject("unitWeight")
          .put("value", imperial ? "118 pcf" : "1870 kg/m3")
          .put("from", from);
      if (ground.hasNonNull("water")) {
        String depth = ground.get("water").asText();
        ground.putObject("water").put("depth", depth).put("from", from);
      }
    }
  }
}

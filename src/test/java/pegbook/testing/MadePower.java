package pegbook.testing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** Made-up power lines; told by the job's number, so that no chance shifts. */
final class MadePower {
  private static final List<String> NAMES =
      List.of(
          "house outlet",
          "the old distribution board in the cellar of the lower barn",
          "Hausanschlusskasten");
  private static final List<String> METHODS = List.of("conduit", "metal conduit", "direct burial");
  private static final List<String> CIRCUITS =
      List.of("residential branch", "other branch", "feeder", "landscape lighting");

  private final ObjectNode job;
  private final int number;
  private final boolean imperial;

  MadePower(ObjectNode job, int number, boolean imperial) {
    this.job = job;
    this.number = number;
    this.imperial = imperial;
  }

  /** One job in three has power, from far off up to the floor or on to its first pier. */
  void power(double reach) {
    if (number % 3 != 2) {
      return;
    }
    ObjectNode power = job.putObject("power");
    ArrayNode route = power.putArray("route");
    double turn = number * 37.0;
    double far = reach + 4000 + number % JobMaker.ROUND * 900.0;
    route.add(NAMES.get(number / 3 % NAMES.size()) + ": " + place(far, turn));
    for (int corner = 1; corner <= number % 4; corner++) {
      route.add(place(reach + 1500 + (far - reach - 1500) * (1 - corner / 5.0), turn + corner * 6));
    }
    route.add("edge: " + place(reach + 900, turn + 20));
    if (number % 2 == 0 && !job.at("/piers/0").isMissingNode()) {
      power.put("pier", "P1");
    }
    boolean low = number % 5 == 1;
    power.put("voltage", low ? "24 V" : imperial ? (number % 4 == 0 ? "240 V" : "120 V") : "230 V");
    power.put("running", low ? "3 A" : number % 7 * 6 + 4 + " A");
    power.put("breaker", low ? "5 A" : number % 7 * 8 + 10 + " A");
    power.put("method", METHODS.get(number / 2 % METHODS.size()));
    power.put("circuit", low ? CIRCUITS.get(3) : CIRCUITS.get(number % 3));
    power.put("groundFault", number % 2 == 0 ? "yes" : "no");
    power.put("dataCable", number % 4 == 1 ? "yes" : "no");
    power.put("metal", number % 5 == 4 ? "aluminium" : "copper");
    power.put("strands", number % 8 == 5 ? "solid" : "stranded");
    power.put("dug", number % 6 == 5 ? "trencher" : "by hand");
    if (number % 4 == 2) {
      power
          .putArray("under")
          .addObject()
          .put("what", number % 8 == 2 ? "street" : "exterior slab")
          .put("length", imperial ? "4 ft" : "1.2 m");
    }
    if (number % 4 == 3) {
      int inches = Math.max(4, number % JobMaker.ROUND);
      power
          .putObject("depth")
          .put("cover", imperial ? inches + " in" : inches * 25 + " mm")
          .put("from", LongNames.AUTHORITIES.get(number % LongNames.AUTHORITIES.size()));
    }
  }

  private String place(double millimetres, double degrees) {
    double unit = imperial ? 304.8 : 1000;
    double east = millimetres * StrictMath.sin(StrictMath.toRadians(degrees)) / unit;
    double north = millimetres * StrictMath.cos(StrictMath.toRadians(degrees)) / unit;
    String name = imperial ? "ft" : "m";
    return String.format(Locale.ROOT, "%.2f %s, %.2f %s", east, name, north, name);
  }
}

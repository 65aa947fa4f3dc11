package pegbook.testing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Made-up supports and piers. */
final class MadeFootings {
  /** Between the outline and the piers round it, mm. */
  private static final double ROUND_OUTLINE = 1500;

  private final ObjectNode job;
  private final Chance chance;
  private final Written written;
  private final boolean imperial;

  MadeFootings(ObjectNode job, Chance chance, Written written, boolean imperial) {
    this.job = job;
    this.chance = chance;
    this.written = written;
    this.imperial = imperial;
  }

  MadeFootings supports(double hole) {
    if (chance.often(0.9)) {
      ObjectNode supports = job.putObject("supports");
      footing(supports, hole);
      supports.put("gravel", written.length(chance.oneOf(List.of(0.0, 76.2, 101.6, 150.0))));
      double top = chance.oneOf(List.of(0.0, 152.4, 200.0));
      supports.put("top", written.length(top));
      widen(supports, hole, top, 0);
      depth(supports, chance.between(500, 1500));
    }
    return this;
  }

  /** Piers at the centre where there is room, else on a ring round the outline. */
  void piers(MadeOutline outline, double hole, int count) {
    if (count == 0) {
      return;
    }
    ArrayNode piers = job.putArray("piers");
    double start = chance.between(0, 2 * Math.PI);
    for (int i = 0; i < count; i++) {
      double width = chance.between(400, 650);
      ObjectNode pier = piers.addObject().put("id", "P" + (i + 1));
      boolean central = i == 0 && outline.clear() > (hole + width) / 2 + 400;
      double turn = start + i * 2 * Math.PI / count;
      double far = outline.reach() + ROUND_OUTLINE;
      Position place = new Position(far * Math.sin(turn), far * Math.cos(turn));
      pier.put("at", central ? "centre" : written.place(place));
      footing(pier, width);
      depth(pier, chance.between(1000, 2200));
      double top = chance.between(300, 1200);
      pier.put("top", written.length(top));
      widen(pier, width, top, i + 1);
      if (chance.often(0.7)) {
        pier.put("instrument", imperial ? "85 lb" : "40 kg");
      }
      top(pier, i);
    }
  }

  /** Bells, pads and caps at some; told by the width, so that no chance shifts. */
  private void widen(ObjectNode footing, double hole, double top, int number) {
    long width = Math.round(hole) + number;
    boolean fromBottom = footing.at("/tube/from").asText().equals("bottom");
    if (fromBottom && width % 3 != 0) {
      footing.putObject("pad").put("thickness", written.length(90 + (int) (width % 4) * 20));
    }
    if (!fromBottom && width % 4 == 1) {
      ObjectNode bell = footing.putObject("bell");
      bell.put("diameter", written.length(hole * 1.3 + 40));
      bell.put("height", written.length(100 + (int) (width % 5) * 15));
      if (width % 8 == 1) {
        bell.put("toe", written.length(0));
      }
    }
    if (top > 180 && width % 5 < 2) {
      footing
          .putObject("cap")
          .put(width % 2 == 0 ? "side" : "diameter", written.length(hole * 1.2 + 30))
          .put("thickness", written.length(top / 2.5));
    }
  }

  private void footing(ObjectNode footing, double hole) {
    footing.put("hole", written.length(hole));
    boolean tubed = hole > 300 && chance.often(0.6);
    double inside = tubed ? hole - chance.between(20, 90) : hole;
    if (tubed) {
      footing
          .putObject("tube")
          .put("inside", written.length(inside))
          .put("from", chance.often(0.7) ? "ground" : "bottom");
    }
    if (tubed && footing.at("/tube/from").asText().equals("bottom") && Math.round(hole) % 2 == 0) {
      footing.put("side", "granular backfill");
    }
    if (inside > 280 && chance.often(0.6)) {
      ObjectNode steel = footing.putObject("steel");
      steel.put("bars", chance.whole(3, 8));
      steel.put("size", imperial ? chance.oneOf(List.of("#4", "#5")) : "12 mm");
      steel.put("cover", written.length(75));
      starters(steel, hole);
      if (chance.often(0.7)) {
        steel
            .putObject("ties")
            .put("size", imperial ? "#3" : "8 mm")
            .put("spacing", written.length(chance.between(150, 300)));
      }
    }
  }

  /** Hooked feet and joints of two lifts at some; told by the width, so that no chance shifts. */
  private void starters(ObjectNode steel, double hole) {
    long width = Math.round(hole);
    if (width % 3 == 0) {
      steel.put("foot", "hooked");
    }
    if (width % 4 < 2) {
      steel.put("firstLift", written.length(width % 4 == 0 ? hole * 2 : 200 + hole / 4));
    }
  }

  /** Wind, bolts and a sleeve at some piers; told by the number, so that no other chance shifts. */
  private void top(ObjectNode pier, int number) {
    if (number % 2 == 0) {
      pier.put("wind", imperial ? "40 lbf" : "150 N");
    }
    if (number % 3 != 2) {
      pier.putObject("anchors")
          .put("count", 3 + number % 4)
          .put("size", imperial ? "1/2 in" : "12 mm")
          .put("circle", written.length(150 + 20 * (number % 5)))
          .put("first", 17 * number % 360 + " deg");
      pier.put("sleeve", imperial ? "2 in" : "50 mm");
    }
  }

  private void depth(ObjectNode footing, double millimetres) {
    if (chance.often(0.6)) {
      footing.put("depth", written.length(millimetres));
    } else if (chance.often(0.5)) {
      footing.put("depth", "below frost");
    }
  }
}

package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.floorframe.FrameSite.PierGap;
import pegbook.geometry.NearestCells.Opening;
import pegbook.geometry.Point;
import pegbook.geometry.Polygon;
import pegbook.measure.Length;

/**
 * Floors for pencil and paper, in metres: joists along the east, 0.4 m apart at most, joists and
 * rim 40 mm thick. Posts are written east, north; piers east, north, radius.
 */
final class FrameScene {
  private static final double SPACING = 0.4;
  private static final double PLY = 0.04;

  /** 4 m by 2 m. */
  static final double[] FLOOR = {0, 0, 4, 0, 4, 2, 0, 2};

  /** A post 0.2 m inside each of its corners. */
  static final double[] CORNERS = {0.2, 0.2, 3.8, 0.2, 3.8, 1.8, 0.2, 1.8};

  static final double[] NONE = {};

  /** Two arms, 1.4 m wide, on a foot of 4 m. */
  static final double[] ARMS = {0, 0, 4, 0, 4, 2, 2.6, 2, 2.6, 0.7, 1.4, 0.7, 1.4, 2, 0, 2};

  static final double[] ARMS_POSTS = {
    0.2, 0.2, 3.8, 0.2, 3.8, 1.8, 2.8, 1.8, 2.8, 0.5, 1.2, 0.5, 1.2, 1.8, 0.2, 1.8
  };

  private FrameScene() {}

  private static List<Point> points(double... eastNorth) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < eastNorth.length; i += 2) {
      points.add(new Point(eastNorth[i], eastNorth[i + 1]));
    }
    return points;
  }

  private static List<Post> posts(String letter, double... eastNorth) {
    List<Post> posts = new ArrayList<>();
    points(eastNorth).forEach(at -> posts.add(new Post(letter + (posts.size() + 1), at)));
    return posts;
  }

  static FrameSite site(double[] floor, double[] ring, double[] inner, double... piers) {
    List<PierGap> gaps = new ArrayList<>();
    for (int i = 0; i < piers.length; i += 3) {
      Point centre = new Point(piers[i], piers[i + 1]);
      gaps.add(new PierGap("P" + (i / 3 + 1), new Opening(centre, new Length(piers[i + 2]))));
    }
    Polygon edge = new Polygon(points(floor));
    return new FrameSite(edge, edge, posts("S", ring), posts("I", inner), gaps, true);
  }

  static JoistLayout lay(double[] floor, double[] ring, double[] inner, double... piers) {
    return lay(site(floor, ring, inner, piers));
  }

  static JoistLayout lay(FrameSite site) {
    return JoistLayout.of(site, new Axes(1, 0), SPACING, PLY);
  }

  static LoadPath loads(double[] floor, double[] ring, double[] inner, double... piers) {
    FrameSite site = site(floor, ring, inner, piers);
    return LoadPath.of(site, lay(site));
  }
}

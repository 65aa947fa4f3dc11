package pegbook.calc.floorframe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.floorframe.LoadPath.At;
import pegbook.calc.floorframe.LoadPath.BayLoad;
import pegbook.calc.floorframe.LoadPath.Fault;
import pegbook.calc.floorframe.LoadPath.Header;
import pegbook.calc.floorframe.LoadPath.Trimmer;
import pegbook.geometry.FloorParts;
import pegbook.geometry.NearestCells.Opening;

/** Follows the floor from joist to header, from these to beams and posts. */
final class LoadTracing {
  /** Less than this of the floor lost is rounding. */
  private static final double LOST = 1e-4;

  private final FrameSite site;
  private final JoistLayout layout;
  private final FloorParts floor;
  private final Map<String, Double> carried = new LinkedHashMap<>();
  private final List<List<At>> onBays = new ArrayList<>();
  private final double[] even;
  private final Map<Node.OnHeader, List<At>> onHeaders = new LinkedHashMap<>();
  private final Map<Joist, List<At>> hung = new LinkedHashMap<>();
  private final List<Header> headers = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();

  LoadTracing(FrameSite site, JoistLayout layout) {
    this.site = site;
    this.layout = layout;
    List<Opening> openings =
        site.gaps().stream()
            .map(FrameSite.PierGap::opening)
            .map(gap -> new Opening(layout.axes().local(gap.centre()), gap.radius()))
            .toList();
    this.floor = FloorParts.of(site.outline().map(layout.axes()::local), openings);
    this.even = new double[layout.bays().size()];
    layout.bays().forEach(bay -> onBays.add(new ArrayList<>()));
    layout.posts().forEach(post -> carried.put(post.id(), 0.0));
  }

  LoadPath path() {
    beams();
    layout.joists().stream().filter(Joist::isCut).forEach(this::cutJoist);
    for (int gap = 0; gap < site.gaps().size(); gap++) {
      headers(gap);
    }
    layout.joists().stream().filter(joist -> !joist.isCut()).forEach(this::wholeJoist);
    List<BayLoad> bays = new ArrayList<>();
    for (int i = 0; i < layout.bays().size(); i++) {
      Bay bay = layout.bays().get(i);
      BayLoad load = new BayLoad(i, bay.length(), onBays.get(i), even[i]);
      bays.add(load);
      // What lies on a beam along its length has gone to its posts already.
      double across = load.total() - even[i];
      double moment = load.loads().stream().mapToDouble(at -> at.area() * at.along()).sum();
      toPost(bay.to(), moment / bay.length());
      toPost(bay.from(), across - moment / bay.length());
    }
    double all = carried.values().stream().mapToDouble(Double::doubleValue).sum();
    double whole = floor.area().squareMetres();
    if (faults.isEmpty() && Math.abs(all - whole) > LOST * whole) {
      faults.add(new Fault(Fault.Kind.FLOOR_LOST, ""));
    }
    return new LoadPath(whole, carried, bays, trimmers(), headers, faults);
  }

  /** A beam must pass an opening with room for half its own width, two inches at most. */
  private void beams() {
    for (FrameSite.PierGap gap : site.gaps()) {
      for (Bay bay : layout.bays()) {
        double way = bay.line().distanceTo(layout.axes().local(gap.opening().centre())).metres();
        if (way < gap.opening().radius().metres() + 0.06) {
          faults.add(new Fault(Fault.Kind.GAP_ON_BEAM, gap.pier() + ", " + bay.name()));
        }
      }
    }
  }

  private void toPost(Post post, double area) {
    carried.merge(post.id(), area, Double::sum);
  }

  private void give(Node node, double y, double area) {
    if (node.on() instanceof Node.OnPost on) {
      toPost(on.post(), area);
    } else if (node.on() instanceof Node.OnBay on) {
      onBays.get(on.bay()).add(new At(on.along(), area));
    } else if (node.on() instanceof Node.OnHeader on) {
      onHeaders.computeIfAbsent(on, any -> new ArrayList<>()).add(new At(y, area));
    }
  }

  /** By the lever between two rests. */
  private void share(Node first, Node second, double y, double area, double x) {
    double part = (x - first.x()) / (second.x() - first.x());
    give(second, y, area * part);
    give(first, y, area * (1 - part));
  }

  /** How far along its line a joist carries the floor: where that has arms, each its own. */
  private record Stretch(double from, double to) {}

  private Stretch stretch(Joist joist) {
    List<Joist> alike =
        layout.joists().stream().filter(other -> other.line() == joist.line()).toList();
    int place = alike.indexOf(joist);
    return new Stretch(
        place == 0 ? -1e3 : (alike.get(place - 1).end() + joist.start()) / 2,
        place + 1 == alike.size() ? 1e3 : (joist.end() + alike.get(place + 1).start()) / 2);
  }

  private void cutJoist(Joist joist) {
    Stretch stretch = stretch(joist);
    for (Joist.Part part : joist.parts()) {
      boolean first = part.start() == joist.start();
      boolean last = part.end() == joist.end();
      if (part.nodes().size() < 2) {
        faults.add(new Fault(Fault.Kind.JOIST_LOOSE, name(joist)));
        return;
      }
      double from = first ? stretch.from() : part.nodes().get(0).x();
      double to = last ? stretch.to() : part.nodes().get(part.nodes().size() - 1).x();
      spans(joist, part.nodes(), from, to);
    }
  }

  private String name(Joist joist) {
    return joist.cuts().stream()
        .map(cut -> site.gaps().get(cut.gap()).pier())
        .findFirst()
        .orElse("");
  }

  private void spans(Joist joist, List<Node> nodes, double from, double to) {
    for (int i = 0; i + 1 < nodes.size(); i++) {
      double west = i == 0 ? from : nodes.get(i).x();
      double east = i + 2 == nodes.size() ? to : nodes.get(i + 1).x();
      FloorParts.Part part = floor.between(west, joist.low(), east, joist.high());
      share(
          nodes.get(i),
          nodes.get(i + 1),
          joist.y(),
          part.area().squareMetres(),
          part.centre().east());
    }
  }

  /** Whole joists beside an opening take its headers, and the floor between these. */
  private void headers(int gap) {
    List<Joist> cut = layout.joists().stream().filter(joist -> cuts(joist, gap)).toList();
    if (cut.isEmpty()) {
      return;
    }
    Optional<Joist> low = beside(gap, cut, -1);
    Optional<Joist> high = beside(gap, cut, 1);
    if (low.isEmpty() || high.isEmpty()) {
      faults.add(new Fault(Fault.Kind.GAP_AT_EDGE, site.gaps().get(gap).pier()));
      return;
    }
    Joist.Cut taken =
        cut.get(0).cuts().stream().filter(each -> each.gap() == gap).findFirst().orElseThrow();
    between(cut, low.get(), high.get(), taken);
    for (boolean far : new boolean[] {false, true}) {
      List<At> loads = onHeaders.getOrDefault(new Node.OnHeader(gap, far), List.of());
      double x = far ? taken.to() : taken.from();
      double wide = high.get().y() - low.get().y();
      for (At at : loads) {
        double part = (at.along() - low.get().y()) / wide;
        hang(high.get(), x, at.area() * part);
        hang(low.get(), x, at.area() * (1 - part));
      }
      headers.add(
          new Header(
              gap,
              x,
              low.get().y(),
              high.get().y(),
              loads.stream().mapToDouble(At::area).sum(),
              loads.size()));
    }
  }

  private static boolean cuts(Joist joist, int gap) {
    return joist.cuts().stream().anyMatch(cut -> cut.gap() == gap);
  }

  /** The next whole joist on a side that has the opening between two of its rests. */
  private Optional<Joist> beside(int gap, List<Joist> cut, int side) {
    int edge =
        side < 0
            ? cut.stream().mapToInt(Joist::line).min().orElseThrow()
            : cut.stream().mapToInt(Joist::line).max().orElseThrow();
    double x = layout.axes().local(site.gaps().get(gap).opening().centre()).east();
    return layout.joists().stream()
        .filter(joist -> joist.line() == edge + side && !joist.isCut())
        .filter(joist -> joist.nodes().size() > 1)
        .filter(
            joist ->
                joist.nodes().get(0).x() < x && joist.nodes().get(joist.nodes().size() - 1).x() > x)
        .findFirst();
  }

  private void hang(Joist joist, double x, double area) {
    hung.computeIfAbsent(joist, any -> new ArrayList<>()).add(new At(x, area));
  }

  private void between(List<Joist> cut, Joist low, Joist high, Joist.Cut taken) {
    double middle = (low.y() + high.y()) / 2;
    double from = cut.stream().mapToDouble(Joist::low).min().orElseThrow();
    double to = cut.stream().mapToDouble(Joist::high).max().orElseThrow();
    FloorParts.Part near = floor.between(taken.from(), from, taken.to(), middle);
    FloorParts.Part far = floor.between(taken.from(), middle, taken.to(), to);
    hang(low, near.centre().east(), near.area().squareMetres());
    hang(high, far.centre().east(), far.area().squareMetres());
  }

  private void wholeJoist(Joist joist) {
    List<Node> nodes = joist.nodes();
    Stretch stretch = stretch(joist);
    if (nodes.size() == 1) {
      FloorParts.Part part = floor.between(stretch.from(), joist.low(), stretch.to(), joist.high());
      give(nodes.get(0), joist.y(), part.area().squareMetres());
      return;
    }
    if (joist.isOnBeam()) {
      alongBeam(joist, stretch);
    }
    spans(joist, nodes, stretch.from(), stretch.to());
    for (At at : hung.getOrDefault(joist, List.of())) {
      Node first = nodes.get(0);
      Node second = nodes.get(1);
      for (int i = 1; i + 1 < nodes.size() && nodes.get(i).x() < at.along(); i++) {
        first = nodes.get(i);
        second = nodes.get(i + 1);
      }
      share(first, second, joist.y(), at.area(), at.along());
    }
  }

  /** The beam under a joist that lies along it is held to what the joist carries. */
  private void alongBeam(Joist joist, Stretch stretch) {
    for (int i = 0; i < layout.bays().size(); i++) {
      Bay bay = layout.bays().get(i);
      if (bay.isAlong() && Math.abs(bay.from().at().north() - joist.y()) < Post.SAME) {
        double west = Math.min(bay.from().at().east(), bay.to().at().east());
        double east = Math.max(bay.from().at().east(), bay.to().at().east());
        boolean first = west <= joist.nodes().get(0).x() + Post.SAME;
        boolean last = east >= joist.nodes().get(joist.nodes().size() - 1).x() - Post.SAME;
        even[i] +=
            floor
                .between(
                    first ? stretch.from() : west,
                    joist.low(),
                    last ? stretch.to() : east,
                    joist.high())
                .area()
                .squareMetres();
      }
    }
  }

  private List<Trimmer> trimmers() {
    List<Trimmer> trimmers = new ArrayList<>();
    hung.forEach(
        (joist, loads) -> {
          List<Node> nodes = joist.nodes();
          int i = 0;
          while (i + 2 < nodes.size() && nodes.get(i + 1).x() < loads.get(0).along()) {
            i++;
          }
          double start = nodes.get(i).x();
          trimmers.add(
              new Trimmer(
                  joist,
                  nodes.get(i + 1).x() - start,
                  Math.min(joist.high() - joist.low(), 1e2),
                  loads.stream().map(at -> new At(at.along() - start, at.area())).toList()));
        });
    return trimmers;
  }
}

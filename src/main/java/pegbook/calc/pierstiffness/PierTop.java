package pegbook.calc.pierstiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pegbook.calc.pierstiffness.PierStiffness.AlikePiers;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Kind;
import pegbook.geometry.Point;
import pegbook.job.Anchors;
import pegbook.job.Sleeve;
import pegbook.job.Steel;
import pegbook.measure.Angle;
import pegbook.measure.Length;
import pegbook.published.Bars;
import pegbook.published.Citation;

/** Whether bolts, sleeve and steel find room beside one another in a pier's top. */
final class PierTop {
  /** Concrete between a bolt's middle and the concrete's side, in bolt diameters. */
  private static final double EDGE_DIAMETERS = 6;

  private static final Length TOLERANCE = Length.ofMillimetres(0.1);
  private static final Citation EDGE = new Citation("aci-318-19-memory", "17.9.2");

  private PierTop() {}

  static List<Finding> findings(AlikePiers piers) {
    List<Finding> findings = new ArrayList<>();
    Optional<Anchors> anchors = piers.pier().anchors();
    Optional<Sleeve> sleeve = piers.pier().sleeve();
    anchors.flatMap(bolts -> nearEdge(piers, bolts)).ifPresent(findings::add);
    anchors.flatMap(bolts -> onBars(piers, bolts)).ifPresent(findings::add);
    anchors
        .flatMap(bolts -> sleeve.flatMap(pipe -> onSleeve(piers, bolts, pipe)))
        .ifPresent(findings::add);
    sleeve
        .filter(pipe -> !pipe.depth().plus(pipe.outside()).isLessThan(piers.hole().depth()))
        .map(
            pipe ->
                PierFindings.about(piers, Kind.ASK, "sleeve-too-deep", "sleeve", Citation.GEOMETRY)
                    .with("depth", Argument.of(pipe.depth()))
                    .with("underside", Argument.of(piers.hole().depth())))
        .ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> nearEdge(AlikePiers piers, Anchors bolts) {
    Length edge = piers.hole().headWidth().minus(bolts.circle()).times(0.5);
    Length wanted = bolts.size().times(EDGE_DIAMETERS);
    return edge.plus(TOLERANCE).isLessThan(wanted)
        ? Optional.of(
            PierFindings.about(piers, Kind.ASK, "bolts-near-edge", "anchors.circle", EDGE)
                .with("edge", Argument.of(edge))
                .with("wanted", Argument.of(wanted)))
        : Optional.empty();
  }

  /** Bolts whose circle meets that of the upright bars must stand between them. */
  private static Optional<Finding> onBars(AlikePiers piers, Anchors bolts) {
    return piers
        .hole()
        .steel()
        .filter(
            steel -> {
              Length apart = barCircle(piers, steel).minus(bolts.circle()).abs().times(0.5);
              Length touch = bolts.size().plus(Bars.get(steel.size()).diameter()).times(0.5);
              return apart.isLessThan(touch.plus(TOLERANCE));
            })
        .map(
            steel ->
                PierFindings.about(
                    piers, Kind.NOTE, "bolts-meet-bars", "anchors", Citation.GEOMETRY));
  }

  private static Length barCircle(AlikePiers piers, Steel steel) {
    Length ties = steel.ties().map(each -> Bars.get(each.size()).diameter()).orElse(Length.ZERO);
    return piers
        .hole()
        .formAbove()
        .minus(steel.cover().plus(ties).times(2))
        .minus(Bars.get(steel.size()).diameter());
  }

  private static Optional<Finding> onSleeve(AlikePiers piers, Anchors bolts, Sleeve sleeve) {
    Point pipe = Point.ORIGIN.moved(sleeve.towards(), sleeve.offset());
    Length touch = sleeve.outside().plus(bolts.size()).times(0.5);
    for (int i = 0; i < bolts.count(); i++) {
      Angle towards = bolts.first().plus(Angle.ofDegrees(360.0 * i / bolts.count()));
      Point bolt = Point.ORIGIN.moved(towards, bolts.circle().times(0.5));
      if (bolt.distanceTo(pipe).isLessThan(touch.plus(TOLERANCE))) {
        return Optional.of(
            PierFindings.about(piers, Kind.ASK, "sleeve-meets-bolt", "sleeve", Citation.GEOMETRY));
      }
    }
    return Optional.empty();
  }
}

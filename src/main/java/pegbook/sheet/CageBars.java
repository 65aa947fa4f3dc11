package pegbook.sheet;

import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import pegbook.calc.steelplan.SteelPlan.Cage;
import pegbook.calc.steelplan.SteelPlan.Hook;
import pegbook.calc.steelplan.SteelPlan.Rings;
import pegbook.calc.steelplan.SteelPlan.Starters;
import pegbook.calc.steelplan.SteelPlan.Turn;
import pegbook.measure.Length;
import pegbook.sheet.drafting.Canvas;
import pegbook.sheet.drafting.DrawingScale;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/**
 * The steel of a cage seen from the side, to scale.
 *
 * @param canvas to draw on
 * @param scale of the drawing
 * @param cage the steel
 * @param middle of the footing on paper
 * @param underside of the concrete on paper
 */
record CageBars(Canvas canvas, DrawingScale scale, Cage cage, double middle, double underside) {
  /** Beside a bar of its own kind a starter must be seen, however small the scale. */
  private static final double LEAST_BESIDE_MM = 0.9;

  private double at(Length overUnderside) {
    return underside + scale.millimetres(overUnderside);
  }

  /** The lower end of all steel. */
  double foot() {
    return at(cage.bottomCover());
  }

  /** The lower end of the upright bars: the joint, where there are two lifts. */
  double uprightFoot() {
    return at(cage.uprights().foot());
  }

  double head() {
    return at(cage.uprights().foot().plus(cage.uprights().rise()));
  }

  /** The upper end of starters. */
  double head(Starters starters) {
    return at(cage.bottomCover().plus(starters.rise()));
  }

  /** From the middle to the outermost bar. */
  double radius() {
    return cage.bars() == 1 ? 0 : scale.millimetres(cage.barCircle()) / 2;
  }

  /** From the middle to the outermost starter: on the inner side of its bar. */
  double starterRadius() {
    return radius() - beside();
  }

  private double beside() {
    return Math.max(LEAST_BESIDE_MM, scale.millimetres(cage.diameter()));
  }

  double ringHeight(Rings rings, int number) {
    return foot() + scale.millimetres(rings.fromEnd().plus(rings.spacing().times(number)));
  }

  /** Draws it with these pens; the joint dashed across the concrete, so wide on paper. */
  void draw(Pen bars, Pen ringPen, double jointWidth) {
    places()
        .forEach(x -> upright(middle + x, uprightFoot(), head(), cage.uprights().hook(), x, bars));
    cage.uprights()
        .starters()
        .ifPresent(
            starters -> {
              places()
                  .forEach(
                      x ->
                          upright(
                              middle + x - (x < 0 ? -beside() : beside()),
                              foot(),
                              head(starters),
                              starters.hook(),
                              x,
                              bars));
              double y = at(starters.joint());
              canvas.line(
                  new Spot(middle - jointWidth / 2, y),
                  new Spot(middle + jointWidth / 2, y),
                  Pen.THIN.dashed());
            });
    cage.rings()
        .ifPresent(
            rings -> {
              double side = scale.millimetres(rings.outside()) / 2;
              for (int i = 0; i < rings.count(); i++) {
                double y = ringHeight(rings, i);
                canvas.line(new Spot(middle - side, y), new Spot(middle + side, y), ringPen);
              }
            });
  }

  /** Legs that point at the reader, or away, are not seen. */
  private void upright(
      double x, double low, double high, Optional<Hook> hook, double side, Pen pen) {
    canvas.line(new Spot(x, low), new Spot(x, high), pen);
    if (hook.isPresent() && side != 0) {
      double way = Math.signum(side) * (hook.get().turn() == Turn.OUTWARD ? 1 : -1);
      double leg = scale.millimetres(hook.get().leg());
      canvas.line(new Spot(x, low), new Spot(x + way * leg, low), pen);
    }
  }

  /** Bars seen from the side, those behind one another once. */
  private DoubleStream places() {
    return IntStream.range(0, cage.bars())
        .mapToLong(
            i ->
                Math.round(
                    100 * radius() * StrictMath.cos(Math.PI / 2 - 2 * Math.PI * i / cage.bars())))
        .distinct()
        .mapToDouble(hundredths -> hundredths / 100.0);
  }
}

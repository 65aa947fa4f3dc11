package pegbook.calc.concreteplan;

import java.util.ArrayList;
import java.util.List;
import pegbook.calc.concreteplan.ConcretePlan.Part;
import pegbook.calc.concreteplan.ConcretePlan.PartKind;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Working;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.job.Widenings.Pad;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.UnitSystem;
import pegbook.measure.Volume;

/**
 * The concrete of a footing part by part, from its underside up to some height. The job file takes
 * no joint inside a bell or a pad, so that either is there as a whole.
 *
 * @param parts from the bottom up
 * @param hole whose footing it is
 */
record FootingParts(Hole hole, List<Part> parts) {
  FootingParts {
    parts = List.copyOf(parts);
  }

  /**
   * The parts up to a height over the underside.
   *
   * @param workings takes the steps
   */
  static FootingParts of(
      Hole hole, Length upTo, UnitSystem units, String subject, List<Working> workings) {
    return new Maker(hole, units, subject, workings, new ArrayList<>()).make(upTo);
  }

  /** Below the ground. */
  Volume below() {
    return sum(true);
  }

  /** Above it. */
  Volume above() {
    return sum(false);
  }

  private Volume sum(boolean below) {
    return parts.stream()
        .filter(part -> part.kind().isBelow() == below)
        .map(Part::volume)
        .reduce(Volume.ZERO, Volume::plus);
  }

  /** Cast against the soil: bell and pad always, the shaft where no tube stands round it. */
  Volume againstSoil() {
    boolean tube = hole.tubeFromBottom().isPresent();
    return parts.stream()
        .filter(part -> part.kind().isBelow())
        .filter(part -> !(tube && part.kind() == PartKind.SHAFT))
        .map(Part::volume)
        .reduce(Volume.ZERO, Volume::plus);
  }

  private record Maker(
      Hole hole, UnitSystem units, String subject, List<Working> workings, List<Part> parts) {

    FootingParts make(Length upTo) {
      ConcretePlanFormulas formulas = new ConcretePlanFormulas(units);
      hole.widenings().bell().ifPresent(this::bell);
      hole.widenings().pad().ifPresent(this::pad);
      Length shaft = upTo.min(hole.depth()).minus(hole.widenings().bottomHeight());
      if (shaft.isMoreThan(Length.ZERO)) {
        add(PartKind.SHAFT, formulas.below(), hole.shaft(), shaft);
      }
      Length over = upTo.minus(hole.depth());
      boolean whole = !over.isLessThan(hole.top());
      if (whole || over.isMoreThan(Length.ZERO)) {
        Formula column = isBoxed() ? formulas.boxed() : formulas.above();
        add(PartKind.COLUMN, column, hole.formAbove(), over.min(hole.column()));
      }
      if (over.isMoreThan(hole.column())) {
        hole.widenings().cap().ifPresent(cap -> cap(cap, over.minus(hole.column())));
      }
      return new FootingParts(hole, parts);
    }

    /** Without a tube, what stands above the ground is cast in a box of boards. */
    private boolean isBoxed() {
      return hole.tube().isEmpty() && hole.top().isMoreThan(Length.ZERO);
    }

    private void bell(Bell bell) {
      add(
          PartKind.BELL,
          new PartFormulas(units).bell(),
          hole.diameter(),
          bell.diameter(),
          bell.flare(),
          bell.toe());
    }

    private void pad(Pad pad) {
      add(PartKind.PAD, new PartFormulas(units).pad(), hole.diameter(), pad.thickness());
    }

    private void cap(Cap cap, Length height) {
      PartFormulas formulas = new PartFormulas(units);
      add(
          PartKind.CAP,
          cap.shape() == Shape.ROUND ? formulas.roundCap() : formulas.squareCap(),
          cap.width(),
          height);
    }

    private void add(PartKind kind, Formula formula, Quantity... quantities) {
      Working working = Working.of(formula, subject, quantities);
      workings.add(working);
      parts.add(new Part(kind, working.asVolume()));
    }
  }
}

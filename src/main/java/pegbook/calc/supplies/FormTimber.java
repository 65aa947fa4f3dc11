package pegbook.calc.supplies;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Argument;
import pegbook.figures.Formula;
import pegbook.figures.Hole;
import pegbook.figures.Need;
import pegbook.figures.Working;
import pegbook.job.Job;
import pegbook.job.Widenings.Cap;
import pegbook.job.Widenings.Shape;
import pegbook.measure.Count;
import pegbook.measure.Length;
import pegbook.measure.Quantity;
import pegbook.measure.UnitSystem;

/**
 * Timber of the forms. Concrete above the ground without a tube stands in a box of boards; a tube
 * that begins at the ground over a wider hole hangs on two battens; a tall tube has two braces at a
 * right angle to each other. A cap has a deck under it on four legs, and sides of boards where it
 * is square. Common practice.
 */
final class FormTimber {
  /** A tube that stands no higher is held by its battens or its soil. */
  private static final Length BRACED_OVER = Length.ofMillimetres(310);

  private static final long HANGERS = 2;
  private static final long BRACES = 2;

  /** Two at each end of a piece. */
  private static final int SCREWS_A_PIECE = 4;

  private final List<Hole> holes;
  private final SuppliesFormulas formulas;
  private final boolean imperial;
  private final List<Working> workings = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();
  private long pieces;
  private long braces;

  FormTimber(Job job, List<Hole> holes) {
    this.holes = holes;
    this.formulas = new SuppliesFormulas(job.heading().units());
    this.imperial = job.heading().units() == UnitSystem.IMPERIAL;
    for (AlikeHoles alike : AlikeHoles.of(this.holes)) {
      forms(alike);
    }
    if (braces > 0) {
      needs.add(ShopNeeds.pieces("ground-stakes", Map.of(), braces));
    }
    if (pieces > 0) {
      needs.add(ShopNeeds.pieces("form-screws", Map.of(), SCREWS_A_PIECE * pieces));
    }
  }

  List<Need> needs() {
    return List.copyOf(needs);
  }

  List<Working> workings() {
    return List.copyOf(workings);
  }

  private Working work(AlikeHoles alike, Formula formula, Quantity... quantities) {
    Working working = Working.of(formula, alike.subject(), quantities);
    workings.add(working);
    return working;
  }

  private void forms(AlikeHoles alike) {
    Hole hole = alike.first();
    if (!hole.top().isMoreThan(Length.ZERO)) {
      return;
    }
    hole.widenings().cap().ifPresent(cap -> cap(alike, cap));
    if (hole.tube().isEmpty()) {
      box(alike);
      return;
    }
    boolean hangs =
        hole.isHungOverPad()
            || (hole.tubeFromBottom().isEmpty() && hole.formAbove().isLessThan(hole.diameter()));
    if (hangs) {
      Working length = work(alike, formulas.hanger(), hole.diameter());
      timber(alike, "form-hangers", HANGERS * alike.count(), length.asLength(), batten());
    }
    if (hole.top().isMoreThan(BRACED_OVER)) {
      Working length = work(alike, formulas.brace(), hole.top());
      timber(alike, "form-braces", BRACES * alike.count(), length.asLength(), batten());
      braces += BRACES * alike.count();
    }
  }

  private void box(AlikeHoles alike) {
    Hole hole = alike.first();
    Working length = work(alike, formulas.boxBoard(), hole.diameter());
    Working boards =
        work(alike, formulas.boxBoards(), new Count(alike.count()), hole.column(), boardWidth());
    timber(
        alike,
        "form-boards",
        Math.round(boards.result()),
        length.asLength(),
        List.of(thick(), wide()));
  }

  /** Sides of a square cap, the deck under either shape, and four legs to the ground. */
  private void cap(AlikeHoles alike, Cap cap) {
    Count caps = new Count(alike.count());
    if (cap.shape() == Shape.SQUARE) {
      Working side = work(alike, formulas.capBoard(), cap.width());
      Working sides = work(alike, formulas.capBoards(), caps, cap.thickness(), boardWidth());
      timber(alike, "cap-boards", sides, side.asLength(), List.of(thick(), wide()));
    }
    Working deck = work(alike, formulas.capDeck(), caps, cap.width(), boardWidth());
    timber(alike, "cap-deck", deck, cap.width(), List.of(thick(), wide()));
    Working legs = work(alike, formulas.capLegs(), caps);
    timber(alike, "cap-legs", legs, alike.first().column(), batten());
  }

  private void timber(
      AlikeHoles alike, String id, Working count, Length length, List<Length> section) {
    timber(alike, id, Math.round(count.result()), length, section);
  }

  private void timber(
      AlikeHoles alike, String id, long count, Length length, List<Length> section) {
    Working timbers = work(alike, formulas.timber(), new Count(count), length, sold());
    Map<String, Argument> words = new LinkedHashMap<>();
    words.put("thick", Argument.of(section.get(0)));
    words.put("wide", Argument.of(section.get(1)));
    words.put("stock", Argument.of(sold()));
    words.put("pieces", Argument.of(count));
    words.put("length", Argument.of(length));
    words.put("marks", Argument.of(alike.marks()));
    needs.add(ShopNeeds.whole(id, words, timbers));
    pieces += count;
  }

  /** Timber as yards have it, by its nominal size. */
  private Length sold() {
    return imperial ? Length.ofInches(96) : Length.ofMillimetres(2400);
  }

  private Length thick() {
    return imperial ? Length.ofInches(2) : Length.ofMillimetres(50);
  }

  private Length wide() {
    return imperial ? Length.ofInches(6) : Length.ofMillimetres(150);
  }

  /** What a board of that nominal width really measures, at least. */
  private Length boardWidth() {
    return imperial ? Length.ofInches(5.5) : Length.ofMillimetres(145);
  }

  private List<Length> batten() {
    return List.of(thick(), imperial ? Length.ofInches(4) : Length.ofMillimetres(100));
  }
}

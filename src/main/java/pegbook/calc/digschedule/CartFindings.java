package pegbook.calc.digschedule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.figures.Argument;
import pegbook.figures.Finding;
import pegbook.figures.Finding.Decider;
import pegbook.figures.Finding.Kind;
import pegbook.job.Job;
import pegbook.measure.Mass;
import pegbook.published.Citation;

/** What a cart load weighs. */
final class CartFindings {
  /** What many barrows carry, by their owners' answers; weak. */
  private static final Mass BARROW = Mass.ofPounds(375);

  private CartFindings() {}

  static Optional<Finding> of(Job job, DugSoil soil) {
    return isCartGiven(job) && soil.cartLoad().isMoreThan(BARROW)
        ? Optional.of(heavy(job, soil))
        : Optional.empty();
  }

  /** A cart that nobody named is only a measure for counting loads. */
  private static boolean isCartGiven(Job job) {
    return job.defaults().stream().noneMatch(value -> value.path().equals("spoil.cart"));
  }

  private static Finding heavy(Job job, DugSoil soil) {
    return new Finding(
            Kind.NOTE,
            "cart-heavy",
            List.of(),
            "spoil.cart",
            Map.of(),
            Decider.CREW,
            List.of(new Citation("barrow-limits", ""), soil.weight().citation()))
        .with("cart", Argument.of(job.spoil().cart()))
        .with("load", Argument.of(soil.cartLoad()))
        .with("limit", Argument.of(BARROW));
  }
}

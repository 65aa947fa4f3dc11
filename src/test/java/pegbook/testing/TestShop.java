package pegbook.testing;

import java.util.Optional;
import pegbook.job.Shop;
import pegbook.measure.Length;
import pegbook.measure.Volume;

/** The shop of jobs that say nothing of it. */
final class TestShop {
  private TestShop() {}

  static Shop plain() {
    return new Shop(Optional.empty(), Length.ofFeet(4), Volume.ofCubicFeet(0.5));
  }
}

package pegbook.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import pegbook.sheet.drawing.Spot;
import pegbook.testing.Chance;

/** What the squares find is what going through all things finds. */
class GridTest {
  /** On the paper and beyond its edges, as long as a whole line of text, turned or not. */
  @Provide
  Arbitrary<Plate> plates() {
    return Combinators.combine(
            Arbitraries.doubles().between(-20, 120),
            Arbitraries.doubles().between(-20, 80),
            Arbitraries.doubles().between(0.1, 30),
            Arbitraries.doubles().between(0.1, 4),
            Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(-180, 180)))
        .as((x, y, width, height, turn) -> new Plate(new Spot(x, y), width, height, turn));
  }

  @Property(tries = 300, seed = Chance.SEED)
  void asManyAsWithoutSquares(
      @ForAll @Size(max = 40) List<@From("plates") Plate> things, @ForAll("plates") Plate room) {
    Grid<Plate> grid = new Grid<>(100, 60);
    things.forEach(thing -> grid.add(thing, thing.high(), thing.low()));
    int overlapping = (int) things.stream().filter(room::overlaps).count();
    assertThat(grid.count(room.low(), room.high(), room::overlaps)).isEqualTo(overlapping);
    assertThat(grid.any(room.low(), room.high(), room::overlaps)).isEqualTo(overlapping > 0);
    // Twice, as a thing that was counted once must count again.
    assertThat(grid.count(room.low(), room.high(), room::overlaps)).isEqualTo(overlapping);
  }
}

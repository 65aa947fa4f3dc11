package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;
import static pegbook.job.Default.Basis.PUBLISHED;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Side;
import pegbook.job.Steel;
import pegbook.job.Supports;
import pegbook.job.Tube;
import pegbook.measure.Length;
import pegbook.published.Bars;

/** What supports and piers have in common: hole, depth, form, steel; and the supports. */
final class FootingKeys {
  static final ChoiceValue<String> BAR = new ChoiceValue<>(bars());

  static final Key<String> TIE_SIZE = Key.required("size", BAR, "\"#3\"");
  static final Key<Length> SPACING =
      Key.required("spacing", Values.length("1 in", "4 ft", "25 mm", "1.2 m"), "\"8 in\"");
  static final SectionValue<Steel.Ties> TIES_PART =
      new SectionValue<>(
          List.of(TIE_SIZE, SPACING),
          fields -> new Steel.Ties(fields.get(TIE_SIZE), fields.get(SPACING)));

  static final Key<Integer> BARS = Key.required("bars", new WholeNumber(1, 40), "4");
  static final Key<String> SIZE = Key.required("size", BAR, "\"#4\"");
  static final Key<Steel.Ties> TIES = Key.free("ties", TIES_PART);
  // ACI 318, concrete cast against and always in contact with ground.
  static final Key<Length> COVER =
      Key.orElse(
          "cover",
          Values.length("3/4 in", "12 in", "20 mm", "300 mm"),
          "\"3 in\"",
          "\"75 mm\"",
          PUBLISHED);
  static final Key<Steel.Foot> FOOT = Key.free("foot", ChoiceValue.of(Steel.Foot.class));
  static final Key<Length> FIRST_LIFT =
      Key.free("firstLift", Values.length("6 in", "30 ft", "150 mm", "9 m"));
  static final SectionValue<Steel> STEEL_PART =
      new SectionValue<>(
          List.of(BARS, SIZE, TIES, COVER, FOOT, FIRST_LIFT),
          fields ->
              new Steel(
                  fields.get(BARS),
                  fields.get(SIZE),
                  fields.find(TIES),
                  fields.get(COVER),
                  fields.find(FOOT).orElse(Steel.Foot.STRAIGHT),
                  fields.find(FIRST_LIFT)));

  private static final QuantityValue<Length> DIAMETER =
      Values.length("4 in", "10 ft", "100 mm", "3 m");
  static final Key<Length> INSIDE = Key.required("inside", DIAMETER, "\"12 in\"");
  static final Key<Tube.From> TUBE_FROM =
      Key.orElse("from", ChoiceValue.of(Tube.From.class), "\"ground\"", COMMON_PRACTICE);
  static final SectionValue<Tube> TUBE_PART =
      new SectionValue<>(
          List.of(INSIDE, TUBE_FROM),
          fields -> new Tube(fields.get(INSIDE), fields.get(TUBE_FROM)));

  /** An empty depth means: as the frost and the code say. */
  static final WordOr<Optional<Length>> DEPTH_VALUE =
      new WordOr<>(
          "below frost",
          Optional.empty(),
          new MappedValue<>(Values.length("6 in", "30 ft", "150 mm", "9 m"), Optional::of));

  static final Key<Optional<Length>> DEPTH =
      Key.orElse("depth", DEPTH_VALUE, "\"below frost\"", COMMON_PRACTICE);
  static final Key<Tube> TUBE = Key.free("tube", new ShortForm<>(INSIDE, TUBE_PART));
  static final Key<Steel> STEEL = Key.free("steel", STEEL_PART);

  static final Key<Length> HOLE =
      Key.orElse("hole", DIAMETER, "\"12 in\"", "\"300 mm\"", COMMON_PRACTICE);
  static final Key<Length> GRAVEL =
      Key.orElse(
          "gravel",
          Values.length("0 in", "3 ft", "0 mm", "1 m"),
          "\"4 in\"",
          "\"100 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> TOP =
      Key.orElse(
          "top",
          Values.length("0 in", "10 ft", "0 mm", "3 m"),
          "\"6 in\"",
          "\"150 mm\"",
          COMMON_PRACTICE);
  static final SectionValue<Supports> SUPPORTS =
      new SectionValue<>(
          List.of(
              HOLE,
              DEPTH,
              GRAVEL,
              TOP,
              TUBE,
              STEEL,
              WindKeys.SIDE,
              WideningKeys.BELL,
              WideningKeys.PAD,
              WideningKeys.CAP),
          (fields, report) -> fits(fields, HOLE, TOP, report),
          FootingKeys::supports);

  private FootingKeys() {}

  private static Map<String, String> bars() {
    Map<String, String> bars = new LinkedHashMap<>();
    Bars.all().forEach(bar -> bars.put(bar.name(), bar.name()));
    return bars;
  }

  private static Supports supports(Fields fields) {
    return new Supports(
        fields.get(HOLE),
        fields.get(DEPTH),
        fields.get(GRAVEL),
        fields.get(TOP),
        fields.find(TUBE),
        fields.find(STEEL),
        fields.find(WindKeys.SIDE),
        WideningKeys.of(fields));
  }

  /** Whether the form fits the hole, and the steel the concrete. */
  static boolean fits(Fields fields, Key<Length> holeKey, Key<Length> topKey, Report report) {
    Optional<Length> hole = fields.find(holeKey);
    Optional<Length> inside = fields.find(TUBE).map(Tube::inside);
    boolean tubeFits = hole.isEmpty() || inside.isEmpty() || !inside.get().isMoreThan(hole.get());
    if (!tubeFits) {
      report
          .object(fields.node(TUBE).path())
          .ifPresent(tube -> tube.complain(INSIDE, Complaint.TUBE_WIDE));
    }
    Optional<Length> across = fields.has(TUBE) ? inside : hole;
    Optional<Length> covers = fields.find(STEEL).map(steel -> steel.cover().times(2));
    boolean steelFits =
        across.isEmpty() || covers.isEmpty() || covers.get().isLessThan(across.get());
    if (!steelFits) {
      report
          .object(fields.node(STEEL).path())
          .ifPresent(steel -> steel.complain(COVER, Complaint.COVER_SWALLOWS));
    }
    boolean widens = WideningKeys.fit(fields, holeKey, topKey, report);
    return tubeFits && steelFits && widens && hasRoomRound(fields);
  }

  /** Gravel goes round a tube that stands on the bottom, or nowhere. */
  private static boolean hasRoomRound(Fields fields) {
    boolean gravel = fields.find(WindKeys.SIDE).filter(Side.GRANULAR_BACKFILL::equals).isPresent();
    boolean room = fields.find(TUBE).filter(tube -> tube.from() == Tube.From.BOTTOM).isPresent();
    if (gravel && !room) {
      fields.complain(WindKeys.SIDE, Complaint.BACKFILL_NO_ROOM);
    }
    return room || !gravel;
  }
}

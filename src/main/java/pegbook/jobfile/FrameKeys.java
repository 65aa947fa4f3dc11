package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pegbook.job.Frame;
import pegbook.job.Frame.Boards;
import pegbook.job.Frame.Grade;
import pegbook.job.Frame.Species;
import pegbook.job.Frame.Timber;
import pegbook.measure.Length;
import pegbook.measure.Pressure;
import pegbook.measure.UnitSystem;
import pegbook.published.TimberValue;

/** What a floor's frame is made of. */
final class FrameKeys {
  static final Key<Species> SPECIES = Key.free("species", ChoiceValue.of(Species.class));
  static final Key<Grade> GRADE =
      Key.orElseAsked(
          "grade", ChoiceValue.of(Grade.class), "\"no 2\"", "\"no 2\"", COMMON_PRACTICE);
  static final Key<Boolean> TREATMENT =
      Key.free("treatment", new ChoiceValue<>(words("incised", "not incised")));

  static final Key<String> CLASS = Key.required("class", Values.NAME, "\"C24\"");
  static final Key<String> FROM = Key.required("from", Values.NAME, "\"the designer, sheet 3\"");
  static final Key<Pressure> BENDING =
      Key.required(
          "bending", Values.pressure("200 psi", "6000 psi", "1.5 MPa", "40 MPa"), "\"7.5 MPa\"");
  static final Key<Pressure> SHEAR =
      Key.required(
          "shear", Values.pressure("20 psi", "600 psi", "0.15 MPa", "4 MPa"), "\"0.7 MPa\"");
  static final Key<Pressure> BEARING =
      Key.required(
          "bearing", Values.pressure("50 psi", "1500 psi", "0.4 MPa", "10 MPa"), "\"1.9 MPa\"");
  static final Key<Pressure> COMPRESSION =
      Key.required(
          "compression",
          Values.pressure("100 psi", "4000 psi", "0.8 MPa", "28 MPa"),
          "\"7.9 MPa\"");
  static final Key<Pressure> STIFFNESS =
      Key.required(
          "stiffness",
          Values.pressure("500000 psi", "3000000 psi", "3500 MPa", "20000 MPa"),
          "\"9000 MPa\"");
  static final Key<Timber.Given> VALUES =
      Key.free(
          "values",
          new SectionValue<>(
              List.of(CLASS, FROM, BENDING, SHEAR, BEARING, COMPRESSION, STIFFNESS),
              fields ->
                  new Timber.Given(
                      fields.get(CLASS),
                      fields.get(FROM),
                      fields.get(BENDING),
                      fields.get(SHEAR),
                      fields.get(BEARING),
                      fields.get(COMPRESSION),
                      fields.get(STIFFNESS))));

  static final Key<Boolean> EXPOSURE =
      Key.orElse(
          "exposure",
          new ChoiceValue<>(words("outdoors", "indoors")),
          "\"outdoors\"",
          COMMON_PRACTICE);
  static final Key<Length> JOIST_SPACING =
      Key.orElse(
          "joistSpacing",
          Values.length("8 in", "32 in", "200 mm", "800 mm"),
          "\"16 in\"",
          "\"400 mm\"",
          COMMON_PRACTICE);
  static final Key<Frame.Along> ALONG =
      Key.free(
          "joistsAlong",
          new MappedValue<>(
              LayoutKeys.TWO_MARKS, marks -> new Frame.Along(marks.get(0), marks.get(1))));
  static final Key<Integer> PLIES = Key.free("beamPlies", new WholeNumber(1, 4));

  static final Key<Length> BOARD_WIDTH =
      Key.orElse(
          "width",
          Values.length("2 in", "12 in", "50 mm", "300 mm"),
          "\"5 1/2 in\"",
          "\"120 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> THICKNESS =
      Key.orElse(
          "thickness",
          Values.length("3/4 in", "2 in", "19 mm", "50 mm"),
          "\"1 in\"",
          "\"28 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> BOARD_GAP =
      Key.orElse(
          "gap",
          Values.length("0 in", "3/4 in", "0 mm", "20 mm"),
          "\"1/8 in\"",
          "\"5 mm\"",
          COMMON_PRACTICE);
  static final Key<Length> SOLD =
      Key.orElse(
          "length",
          Values.length("4 ft", "24 ft", "1.2 m", "7.2 m"),
          "\"16 ft\"",
          "\"4.8 m\"",
          COMMON_PRACTICE);
  static final Key<Boolean> LAID =
      Key.orElse(
          "laid", new ChoiceValue<>(words("diagonal", "square")), "\"square\"", COMMON_PRACTICE);
  static final Key<Boards> BOARDS =
      Key.part(
          "boards",
          new SectionValue<>(
              List.of(BOARD_WIDTH, THICKNESS, BOARD_GAP, SOLD, LAID),
              fields ->
                  new Boards(
                      fields.get(BOARD_WIDTH),
                      fields.get(THICKNESS),
                      fields.get(BOARD_GAP),
                      fields.get(SOLD),
                      fields.get(LAID))));

  static final Key<Frame> FRAME =
      Key.free(
          "frame",
          new SectionValue<>(
              List.of(
                  SPECIES, GRADE, TREATMENT, VALUES, EXPOSURE, JOIST_SPACING, ALONG, PLIES, BOARDS),
              FrameKeys::isKnown,
              fields ->
                  new Frame(
                      timber(fields),
                      fields.get(EXPOSURE),
                      fields.get(JOIST_SPACING),
                      fields.find(ALONG),
                      fields.find(PLIES),
                      fields.get(BOARDS))));

  private FrameKeys() {}

  private static Map<String, Boolean> words(String yes, String no) {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put(yes, true);
    words.put(no, false);
    return words;
  }

  private static Timber timber(Fields fields) {
    Optional<Timber.Given> given = fields.find(VALUES);
    return given.isPresent()
        ? given.get()
        : new Timber.Graded(fields.get(SPECIES), fields.getOrAssume(GRADE), fields.find(TREATMENT));
  }

  /** Either a species or values; a species in inches, and a grade that the table has. */
  private static boolean isKnown(Fields fields, Report report) {
    if (fields.has(SPECIES) == fields.has(VALUES)) {
      fields.complainNotOne(List.of(SPECIES, VALUES));
      return false;
    }
    Optional<Species> species = fields.find(SPECIES);
    Optional<Grade> grade = fields.findOrDefault(GRADE);
    if (species.isPresent() && report.units() == UnitSystem.METRIC) {
      report.complain(fields.node(SPECIES), Complaint.SPECIES_OF_INCHES, Map.of());
      return false;
    }
    if (species.isEmpty() || grade.isEmpty()) {
      return true;
    }
    List<String> listed =
        TimberValue.all().stream()
            .filter(row -> row.species().equals(species.get().id()))
            .map(row -> row.grade().replace('-', ' '))
            .distinct()
            .toList();
    boolean known = listed.contains(grade.get().id().replace('-', ' '));
    if (!known) {
      report.complain(
          fields.node(GRADE),
          Complaint.GRADE_NOT_LISTED,
          Map.of(
              "species", Shown.quoted(species.get().id().replace('-', ' ')),
              "grades", listed.stream().map(Shown::quoted).collect(Collectors.joining(", "))));
    }
    return known;
  }
}

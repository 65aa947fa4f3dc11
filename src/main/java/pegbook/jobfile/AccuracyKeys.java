package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Layout.Accuracy;
import pegbook.job.Layout.TapeClass;
import pegbook.job.Layout.TapeItself;
import pegbook.measure.Length;
import pegbook.measure.Notation;

/** How far a taped distance may be off. */
final class AccuracyKeys {
  /** A tape that errs by more than this part of the distance is no tape. */
  private static final double MOST_GROWTH = 0.01;

  private static final String PER = " per ";

  static final Key<TapeItself> PRESET = Key.free("preset", new ChoiceValue<>(presets()));
  static final Key<TapeItself> PER_LENGTH =
      Key.free("perLength", new CheckedText<>(Complaint.ERROR_PER_LENGTH, AccuracyKeys::growing));
  static final Key<Length> READING =
      Key.orElse(
          "reading",
          Values.length("0 in", "1 in", "0 mm", "25 mm"),
          "\"1/16 in\"",
          "\"1.5 mm\"",
          COMMON_PRACTICE);
  private static final SectionValue<Accuracy> PARTS =
      new SectionValue<>(
          List.of(PRESET, PER_LENGTH, READING),
          AccuracyKeys::hasOneTape,
          fields -> new Accuracy(fields.get(READING), itself(fields)));

  static final Key<Accuracy> ACCURACY =
      Key.orElse(
          "accuracy", new ShortForm<>(PRESET, PARTS), "\"common practice\"", COMMON_PRACTICE);

  private AccuracyKeys() {}

  private static Map<String, TapeItself> presets() {
    Map<String, TapeItself> byWord = new LinkedHashMap<>();
    byWord.put("common practice", new TapeItself.CommonPractice());
    for (TapeClass each : TapeClass.values()) {
      byWord.put("class " + each, new TapeItself.OfClass(each));
    }
    return byWord;
  }

  private static boolean hasOneTape(Fields fields, Report report) {
    List<Key<TapeItself>> keys = List.of(PRESET, PER_LENGTH);
    if (keys.stream().filter(fields::has).count() != 1) {
      fields.complainNotOne(keys);
      return false;
    }
    return true;
  }

  private static TapeItself itself(Fields fields) {
    return fields.find(PRESET).orElseGet(() -> fields.get(PER_LENGTH));
  }

  private static Optional<TapeItself> growing(String text) {
    int per = text.indexOf(PER);
    if (per < 0) {
      return Optional.empty();
    }
    Optional<Length> error = Notation.LENGTHS.read(text.substring(0, per)).taken();
    Optional<Length> over = Notation.LENGTHS.read(text.substring(per + PER.length())).taken();
    return error.flatMap(
        each -> over.filter(whole -> sensible(each, whole)).map(whole -> growing(each, whole)));
  }

  private static TapeItself growing(Length error, Length over) {
    return new TapeItself.Growing(error, over);
  }

  private static boolean sensible(Length error, Length over) {
    return !error.isLessThan(Length.ZERO)
        && over.isMoreThan(Length.ZERO)
        && !error.isMoreThan(over.times(MOST_GROWTH));
  }
}

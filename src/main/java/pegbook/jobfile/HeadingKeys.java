package pegbook.jobfile;

import static pegbook.job.Default.Basis.COMMON_PRACTICE;
import static pegbook.job.Default.Basis.DERIVED;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pegbook.job.Heading;
import pegbook.job.Paper;
import pegbook.measure.UnitSystem;

/** What the packet is called and how it prints; these keys stand at the top of the file. */
final class HeadingKeys {
  static final Key<String> TITLE = Key.required("title", Values.NAME, "\"Sky deck, Alder Hollow\"");
  static final Key<String> REVISION =
      Key.orElse("revision", new TextValue(12), "\"A\"", COMMON_PRACTICE);
  static final Key<LocalDate> ISSUED = Key.free("issued", Values.DATE);
  static final Key<String> OWNER = Key.free("owner", Values.NAME);
  static final Key<UnitSystem> UNITS =
      Key.orElse("units", ChoiceValue.of(UnitSystem.class), "\"imperial\"", COMMON_PRACTICE);
  static final Key<Paper> PAPER =
      Key.orElse("paper", new ChoiceValue<>(papers()), "\"letter\"", "\"A4\"", DERIVED);

  static final List<Key<?>> ALL = List.of(TITLE, REVISION, ISSUED, OWNER, UNITS, PAPER);

  private HeadingKeys() {}

  private static Map<String, Paper> papers() {
    Map<String, Paper> papers = new LinkedHashMap<>();
    papers.put("letter", Paper.LETTER);
    papers.put("legal", Paper.LEGAL);
    papers.put("tabloid", Paper.TABLOID);
    papers.put("A4", Paper.A4);
    papers.put("A3", Paper.A3);
    return papers;
  }

  static Heading heading(Fields fields) {
    return new Heading(
        fields.get(TITLE),
        fields.get(REVISION),
        fields.find(ISSUED),
        fields.find(OWNER),
        fields.get(UNITS),
        fields.get(PAPER));
  }
}

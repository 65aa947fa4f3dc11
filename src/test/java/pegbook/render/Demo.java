package pegbook.render;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import pegbook.lettering.Faces;
import pegbook.sheet.drawing.Drawing;
import pegbook.sheet.drawing.Element;
import pegbook.sheet.drawing.Element.Anchor;
import pegbook.sheet.drawing.Ink;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.drawing.Spot;

/** A made-up packet that uses everything a packet may use. */
final class Demo {
  static final Path HOME = Path.of("src/test/resources/demo");
  static final TemplateFolder FOLDER = TemplateFolder.of(Optional.empty(), Optional.of(HOME));
  static final Faces FACES = new Faces(FOLDER::bytes);

  private static final Map<String, String> TEXTS = new LinkedHashMap<>();

  static {
    TEXTS.put("demo.cover", "Cover");
    TEXTS.put("demo.marks", "Marking out");
    TEXTS.put("demo.plan", "Site plan");
    TEXTS.put("demo.day", "Day 1");
    TEXTS.put("demo.gallery", "Gallery");
    TEXTS.put("demo.follows", "What follows");
    TEXTS.put("demo.caption", "The plan, 1 : 50");
    TEXTS.put("demo.caution", "Call before you dig.");
    TEXTS.put("strip.job", "Job");
    TEXTS.put("strip.sheet", "Sheet");
    TEXTS.put("strip.revision", "Revision");
    TEXTS.put("strip.issued", "Issued");
    TEXTS.put("strip.page", "Page");
    TEXTS.put("strip.of", "of");
    TEXTS.put("strip.owner", "Owner");
    TEXTS.put("strip.file", "Job file");
    TEXTS.put("strip.day.revision", "Rev.");
    TEXTS.put("strip.day.file", "File");
  }

  private Demo() {}

  record Mark(String name, String tape, String check, Optional<String> note) {}

  record Found(String kind, String word, String what, String text, String who, String source) {}

  static PacketDocument binder() {
    return document("binder", model("Sky deck, Alder Hollow"), List.of(plan(), left()));
  }

  static PacketDocument day() {
    Map<String, Object> model = model("Sky deck, Alder Hollow");
    model.put("marks", marks().subList(0, 12));
    return document("day", model, List.of());
  }

  static PacketDocument document(
      String template, Map<String, Object> model, List<Drawing> drawings) {
    return new PacketDocument(
        template,
        "en",
        "Build packet: Sky deck, Alder Hollow",
        "Marks, holes & concrete of a deck",
        "the owner of lot 7",
        Optional.of(LocalDate.of(2027, 4, 12)),
        "0123456789abcdef0123456789abcdef",
        PageSize.LETTER,
        new TitleStrip(
            "Sky deck, Alder Hollow",
            "B",
            "2027-04-12",
            "the owner of lot 7",
            "Pegbook",
            "01234567",
            "Figures to check, not permission to dig."),
        model,
        drawings,
        key -> Optional.ofNullable(TEXTS.get(key)));
  }

  static Map<String, Object> model(String title) {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("title", title);
    model.put("lead", "Nine holes, 12′ 9 ³⁄₈″ across, off the office flange.");
    model.put("marks", marks());
    model.put("plan", plan());
    model.put("left", left());
    model.put("findings", findings());
    return model;
  }

  private static List<Found> findings() {
    return List.of(
        new Found("stop", "STOP", "Utilities are not marked", "No hole begins.", "utility", ""),
        new Found("ask", "ASK", "Frost depth", "", "county building office", "IRC R403.1.4"),
        new Found("note", "NOTE", "Level unknown", "Measure it.", "", ""));
  }

  private static List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (int at = 1; at <= 90; at++) {
      Optional<String> note = at % 3 == 0 ? Optional.of("≥ " + at + "½″ → ok") : Optional.empty();
      marks.add(new Mark("S" + at, "12′ " + at % 12 + " ³⁄₈″", "3.5 ft", note));
    }
    return marks;
  }

  static Drawing plan() {
    return plan(UnaryOperator.identity());
  }

  static Drawing left() {
    return new Drawing(
        "left",
        80,
        40,
        "A ring",
        List.of(
            new Element.Circle(
                new Spot(40, 20), 15, Optional.of(Pen.HEAVY), Optional.of(Ink.LIGHT))));
  }

  /** A plan with a bar of 100 mm, every kind of element, and what a test adds to it. */
  static Drawing plan(UnaryOperator<List<Element>> change) {
    List<Element> elements = new ArrayList<>();
    elements.add(new Element.Line(new Spot(20, 10), new Spot(120, 10), Pen.THICK));
    elements.add(label(new Spot(70, 12), "100 mm", Anchor.CENTRE, 0, false));
    elements.add(
        new Element.Path(
            square(20, 30, 40), true, Optional.of(Pen.MEDIUM), Optional.of(Ink.LIGHT)));
    elements.add(new Element.Hatch(square(80, 30, 30), 45, 2, Pen.HAIR));
    elements.add(
        new Element.Circle(
            new Spot(140, 50), 15, Optional.of(Pen.THIN.dashed()), Optional.empty()));
    elements.add(new Element.Arc(new Spot(140, 50), 20, 0, 270, Pen.THIN.centre()));
    elements.add(
        new Element.Line(new Spot(0, 75), new Spot(150, 75), Pen.MEDIUM.boundary().grey()));
    elements.add(new Element.Line(new Spot(0, 78), new Spot(150, 78), Pen.MEDIUM.dotted()));
    elements.add(label(new Spot(40, 50), "12′ 9 ³⁄₈″", Anchor.CENTRE_MIDDLE, 30, true));
    elements.add(label(new Spot(95, 45), "gravel ∠", Anchor.CENTRE_MIDDLE, 0, true));
    return new Drawing("plan", 160, 82.55, "Nine holes on a lot", change.apply(elements));
  }

  static Element.Label label(Spot at, String text, Anchor anchor, double turn, boolean cleared) {
    return new Element.Label(at, text, 9, anchor, turn, false, cleared);
  }

  private static List<Spot> square(double x, double y, double side) {
    return List.of(
        new Spot(x, y), new Spot(x + side, y), new Spot(x + side, y + side), new Spot(x, y + side));
  }
}

package pegbook.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.concreteplan.ConcretePlan;
import pegbook.figures.Hole;
import pegbook.figures.MarkKind;
import pegbook.job.Concrete;
import pegbook.job.Heading;
import pegbook.job.Job;
import pegbook.job.Outline;
import pegbook.job.Place;
import pegbook.measure.Length;
import pegbook.measure.Mass;
import pegbook.packet.Packet;
import pegbook.sheet.drafting.Extent;
import pegbook.sheet.drawing.Drawing;

/**
 * The cover: the job in a few numbers, its picture, what stands in the way, what is inside.
 *
 * @param title the job's title, as the document's first heading
 * @param issue revision and date in a sentence
 * @param place where it is and who decides
 * @param figures the job in numbers
 * @param findings how many of each kind
 * @param picture the outline with its marks
 * @param scale of the picture
 */
public record CoverSheet(
    String title,
    String issue,
    List<Fact> place,
    List<Fact> figures,
    List<FindingsSheet.Tally> findings,
    Drawing picture,
    String scale)
    implements Sheet {

  /** A name and a value. */
  public record Fact(String name, String value) {}

  @Override
  public List<Drawing> drawings() {
    return List.of(picture);
  }

  /** Takes the numbers from the packet. */
  public static CoverSheet of(Packet packet, Writing writing) {
    CoverPicture picture = CoverPicture.of(packet, writing);
    return new CoverSheet(
        packet.job().heading().title(),
        issue(packet.job().heading(), writing),
        place(packet.job(), writing),
        figures(packet, writing),
        FindingsSheet.tallies(packet, writing),
        picture.drawing(),
        picture.scale());
  }

  private static String issue(Heading heading, Writing writing) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("revision", heading.revision());
    return heading
        .issued()
        .map(
            day -> {
              values.put("issued", writing.formats().date(day));
              return writing.texts().say("cover.issue", values);
            })
        .orElseGet(() -> writing.texts().say("cover.issue-undated", values));
  }

  private static List<Fact> place(Job job, Writing writing) {
    Place place = job.place();
    Texts texts = writing.texts();
    String unknown = texts.say("cover.unknown");
    List<Fact> facts = new ArrayList<>();
    facts.add(fact("owner", job.heading().owner().orElse(unknown), texts));
    facts.add(fact("parcel", place.parcel().orElse(unknown), texts));
    facts.add(fact("authority", place.authority().orElse(unknown), texts));
    facts.add(fact("permit", place.permit().orElse(unknown), texts));
    facts.add(
        fact(
            "utilities",
            place
                .utilities()
                .map(marking -> writing.formats().date(marking.confirmed()))
                .orElseGet(() -> texts.say("cover.utilities-open")),
            texts));
    return facts;
  }

  private static List<Fact> figures(Packet packet, Writing writing) {
    Texts texts = writing.texts();
    Formats formats = writing.formats();
    List<Hole> holes = packet.depthTargets().holes();
    ConcretePlan.Totals totals = packet.concretePlan().totals();
    List<Fact> facts = new ArrayList<>();
    facts.add(fact("outline", outline(packet, writing), texts));
    facts.add(fact("holes", holes(holes, writing), texts));
    facts.add(fact("deepest", deepest(holes, writing), texts));
    facts.add(fact("frost", frost(packet.job(), writing), texts));
    facts.add(fact("soil", formats.volume(packet.digSchedule().totals().bank()), texts));
    facts.add(fact("concrete", formats.volume(totals.poured()), texts));
    facts.add(concreteOrder(packet, writing));
    Mass steel =
        packet.steelPlan().sizes().stream().map(size -> size.mass()).reduce(Mass.ZERO, Mass::plus);
    facts.add(
        fact(
            "steel",
            steel.kilograms() > 0 ? formats.mass(steel) : texts.say("cover.no-steel"),
            texts));
    facts.add(fact("days", days(packet, writing), texts));
    facts.add(fact("start", start(packet.job(), writing), texts));
    return facts;
  }

  private static String outline(Packet packet, Writing writing) {
    Formats formats = writing.formats();
    Map<String, String> values = new LinkedHashMap<>();
    Outline outline = packet.job().layout().outline();
    if (outline instanceof Outline.Regular regular) {
      values.put("sides", formats.count(regular.sides()));
      values.put("across", formats.length(regular.acrossCorners()));
      return writing.texts().say("cover.outline.regular", values);
    }
    if (outline instanceof Outline.Circle circle) {
      values.put("across", formats.length(circle.diameter()));
      return writing.texts().say("cover.outline.circle", values);
    }
    if (outline instanceof Outline.Rectangle rectangle) {
      values.put("length", formats.length(rectangle.length()));
      values.put("width", formats.length(rectangle.width()));
      return writing.texts().say("cover.outline.rectangle", values);
    }
    if (outline instanceof Outline.ChamferedRectangle chamfered) {
      values.put("length", formats.length(chamfered.length()));
      values.put("width", formats.length(chamfered.width()));
      values.put("cut", formats.length(chamfered.cut()));
      return writing.texts().say("cover.outline.chamfered", values);
    }
    Extent extent = Extent.of(packet.placement().outline().corners());
    values.put("eastWest", formats.length(metres(extent.widthMetres())));
    values.put("northSouth", formats.length(metres(extent.heightMetres())));
    return writing.texts().say("cover.outline.free", values);
  }

  private static Length metres(double metres) {
    return new Length(metres);
  }

  private static String holes(List<Hole> holes, Writing writing) {
    long supports = holes.stream().filter(hole -> hole.kind() == MarkKind.SUPPORT).count();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("supports", writing.formats().count(supports));
    values.put("piers", writing.formats().count(holes.size() - supports));
    return writing
        .texts()
        .say(supports == holes.size() ? "cover.holes-supports" : "cover.holes", values);
  }

  private static String deepest(List<Hole> holes, Writing writing) {
    Optional<Hole> deepest = holes.stream().max(Comparator.comparing(Hole::dug));
    Map<String, String> values = new LinkedHashMap<>();
    values.put("depth", deepest.map(hole -> writing.formats().tape(hole.dug())).orElse(""));
    values.put("mark", deepest.map(Hole::mark).orElse(""));
    return writing.texts().say("cover.deepest", values);
  }

  private static String frost(Job job, Writing writing) {
    return job.ground()
        .frost()
        .map(frost -> writing.formats().length(frost.depth()))
        .orElseGet(() -> writing.texts().say("cover.unknown"));
  }

  private static Fact concreteOrder(Packet packet, Writing writing) {
    Concrete concrete = packet.job().concrete();
    ConcretePlan.Totals totals = packet.concretePlan().totals();
    Map<String, String> values = new LinkedHashMap<>();
    if (concrete.mixing() == Concrete.Mixing.READY_MIX) {
      values.put("volume", writing.formats().truckVolume(packet.truckLoads().order()));
      return fact("order", writing.texts().say("cover.truck", values), writing.texts());
    }
    if (packet.ownMix().mix().isPresent()) {
      values.put("bags", writing.formats().count(packet.ownMix().mix().orElseThrow().cementBags()));
      return fact("order", writing.texts().say("cover.own-mix", values), writing.texts());
    }
    values.put("bags", writing.formats().count(totals.bags()));
    values.put("bag", writing.formats().mass(concrete.bag()));
    return fact("order", writing.texts().say("cover.bags", values), writing.texts());
  }

  private static String days(Packet packet, Writing writing) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("days", writing.formats().count(packet.dayPlan().days().size()));
    values.put("people", writing.formats().count(packet.job().crew().people()));
    values.put("hours", writing.formats().hours(packet.job().crew().hoursPerDay()));
    return writing.texts().say("cover.days", values);
  }

  private static String start(Job job, Writing writing) {
    return job.crew()
        .start()
        .map(day -> writing.formats().weekday(day))
        .orElseGet(() -> writing.texts().say("cover.unknown"));
  }

  private static Fact fact(String name, String value, Texts texts) {
    return new Fact(texts.say("cover.name." + name), value);
  }
}

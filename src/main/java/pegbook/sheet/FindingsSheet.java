package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.figures.Finding;
import pegbook.packet.Packet;

/**
 * Before you dig: every finding of the packet, the hardest first.
 *
 * @param title heading
 * @param counts how many of each kind
 * @param summary all findings on one table
 * @param groups all findings in full, by kind
 * @param none true when there is not one
 */
public record FindingsSheet(
    String title, List<Tally> counts, List<Row> summary, List<Group> groups, boolean none)
    implements Sheet {

  /** How many findings of a kind, and what the kind means. */
  public record Tally(String kind, String word, String count, String meaning) {}

  /** One line of the summary; its emphasis is a class of the style sheet. */
  public record Row(String number, String word, String title, String decides, String emphasis) {}

  /** The findings of a kind. */
  public record Group(String kind, String heading, List<Box> boxes) {}

  /**
   * A finding in full.
   *
   * @param about the holes or features it is about; empty: the whole job
   * @param place where in the job file it is mended
   * @param answer true when someone's answer is to be written down
   * @param turn "turn" where the sheet may turn its page, so that not one finding alone is left for
   *     the last
   */
  public record Box(
      String number,
      String kind,
      String word,
      String title,
      String about,
      String text,
      String way,
      String decides,
      String place,
      String sources,
      boolean answer,
      String turn) {}

  /** So many findings are taken to a last page that would hold fewer. */
  private static final int LAST_PAGE = 4;

  /** Words the packet's findings. */
  public static FindingsSheet of(Packet packet, Writing writing) {
    Texts texts = writing.texts();
    List<Box> boxes = new ArrayList<>();
    int turn = turn(packet.findings());
    for (Finding finding : packet.findings()) {
      String mark = boxes.size() == turn ? "turn" : "";
      boxes.add(box(number(boxes.size() + 1), finding, mark, writing));
    }
    List<Group> groups = new ArrayList<>();
    for (Finding.Kind kind : Finding.Kind.values()) {
      String name = name(kind);
      List<Box> some = boxes.stream().filter(box -> box.kind().equals(name)).toList();
      if (!some.isEmpty()) {
        groups.add(new Group(name, texts.say("findings.group." + name), some));
      }
    }
    List<Row> rows = boxes.stream().map(FindingsSheet::row).toList();
    return new FindingsSheet(
        texts.say("findings.title"), tallies(packet, writing), rows, groups, boxes.isEmpty());
  }

  /** How many findings of each kind the packet has. */
  static List<Tally> tallies(Packet packet, Writing writing) {
    Texts texts = writing.texts();
    List<Tally> tallies = new ArrayList<>();
    for (Finding.Kind kind : Finding.Kind.values()) {
      long count = packet.findings().stream().filter(one -> one.kind() == kind).count();
      tallies.add(
          new Tally(
              name(kind),
              texts.say("finding-kind." + name(kind)),
              writing.formats().count(count),
              texts.say("findings.meaning." + name(kind))));
    }
    return List.copyOf(tallies);
  }

  private static Row row(Box box) {
    String emphasis = box.kind().equals(name(Finding.Kind.STOP)) ? "strong" : "";
    return new Row(box.number(), box.word(), box.title(), box.decides(), emphasis);
  }

  /** The place of the finding that may begin the last page; never right under its heading. */
  private static int turn(List<Finding> findings) {
    int place = findings.size() - LAST_PAGE;
    while (place > 0 && findings.get(place).kind() != findings.get(place - 1).kind()) {
      place--;
    }
    return place > 0 ? place : -1;
  }

  private static Box box(String number, Finding finding, String turn, Writing writing) {
    Texts texts = writing.texts();
    Formats formats = writing.formats();
    Map<String, String> values = formats.arguments(finding.arguments());
    String key = "finding." + finding.id();
    return new Box(
        number,
        name(finding.kind()),
        texts.say("finding-kind." + name(finding.kind())),
        texts.say(key + ".title", values),
        formats.names(finding.subjects()),
        texts.say(key + ".text", values),
        texts.say(key + ".way", values),
        decider(finding.decides(), texts),
        finding.place(),
        new Sources(texts).write(finding.citations()),
        finding.kind() == Finding.Kind.ASK,
        turn);
  }

  /** What the finding at a place in the packet's list is called. */
  static String number(int place) {
    return "F" + place;
  }

  private static String name(Finding.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  /** Who decides, in words. */
  static String decider(Finding.Decider decider, Texts texts) {
    return texts.say("decider." + decider.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}

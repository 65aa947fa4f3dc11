package pegbook.testing;

import java.util.List;

/** Names as people give them: short, long, with signs, and too long for any line. */
final class LongNames {
  private static final int LENGTH = 200;

  /** As long as the job file takes a name, in words. */
  static final String LONGEST = longest("the stand of the long instrument above the lower pond, ");

  static final List<String> TITLES =
      List.of(
          "Hut",
          "Deck over the pond",
          "Platform for the large instrument at the far end of the upper meadow, second attempt,"
              + " with the ramp",
          "Gartenhäuschen auf Pfählen, Übergröße",
          "Deck & stair <east> \"new\"",
          "Beobachtungsplattformfundamentierungsvorbereitungsunterlagen",
          "Hytte på stolper i lia ovenfor det gamle naustet ved vannet, nordre tomtegrense",
          LONGEST);

  static final List<String> OWNERS =
      List.of(
          "the owner",
          "the owners of lots 7, 8 and 9 together, and the keeper of the common road",
          "Familie am Hang",
          LONGEST);

  static final List<String> FEATURES =
      List.of(
          "oak",
          "well",
          "old apple tree with the swing, northern trunk",
          "shed",
          "Trinkwasserhauptleitungsschacht",
          "fence post",
          "boulder that nobody could move",
          "septic tank lid, under the turf",
          LONGEST);

  static final List<String> AUTHORITIES =
      List.of(
          "county",
          "the building department of the upper valley and the lake shore",
          "Bezirksbauaufsichtsbehördenaußenstelle",
          LONGEST);

  static final List<String> TOOLS =
      List.of("digger", "the neighbour's two-handled digger with the welded bars", LONGEST);

  private LongNames() {}

  /** A name with a number, not longer than the job file takes. */
  static String numbered(String name, int number) {
    String end = " " + number;
    return name.substring(0, Math.min(name.length(), LENGTH - end.length())) + end;
  }

  /** As much of a text as the job file takes. */
  static String cut(String text) {
    return text.substring(0, Math.min(text.length(), LENGTH)).strip();
  }

  private static String longest(String words) {
    return words.repeat(LENGTH / words.length() + 1).substring(0, LENGTH - 1).strip() + "x";
  }
}

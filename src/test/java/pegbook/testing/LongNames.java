package pegbook.testing;

import java.util.List;

/** Names as people give them: short, long, with signs, and too long for any line. */
final class LongNames {
  static final List<String> TITLES =
      List.of(
          "Hut",
          "Deck over the pond",
          "Platform for the large instrument at the far end of the upper meadow, second attempt,"
              + " with the ramp",
          "Gartenhäuschen auf Pfählen, Übergröße",
          "Deck & stair <east> \"new\"",
          "Beobachtungsplattformfundamentierungsvorbereitungsunterlagen",
          "Hytte på stolper i lia ovenfor det gamle naustet ved vannet, nordre tomtegrense");

  static final List<String> OWNERS =
      List.of(
          "the owner",
          "the owners of lots 7, 8 and 9 together, and the keeper of the common road",
          "Familie am Hang");

  static final List<String> FEATURES =
      List.of(
          "oak",
          "well",
          "old apple tree with the swing, northern trunk",
          "shed",
          "Trinkwasserhauptleitungsschacht",
          "fence post",
          "boulder that nobody could move",
          "septic tank lid, under the turf");

  private LongNames() {}
}

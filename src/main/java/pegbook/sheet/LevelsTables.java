package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.calc.levels.Levels;
import pegbook.calc.levels.Levels.LevelFloor;
import pegbook.calc.levels.Levels.Post;
import pegbook.figures.MarkKind;
import pegbook.figures.PlacedMark;
import pegbook.measure.Length;
import pegbook.packet.Packet;
import pegbook.sheet.drawing.Pen;
import pegbook.sheet.section.GroundProfile;

/** The tables and the picture of the levels. */
record LevelsTables(Packet packet, Levels levels, Writing writing) {
  private Formats formats() {
    return writing.formats();
  }

  /** A height up or down from something: never a bare minus sign. */
  static String upOrDown(Length up, Writing writing) {
    String height = writing.formats().tape(up.abs());
    if (height.equals(writing.formats().tape(Length.ZERO))) {
      return writing.texts().say("levels.same");
    }
    String key = up.isLessThan(Length.ZERO) ? "levels.down" : "levels.up";
    return writing.texts().say(key, Map.of("height", height));
  }

  List<LevelsSheet.Row> rows() {
    return levels.rows().stream().map(this::row).toList();
  }

  private LevelsSheet.Row row(Levels.Row row) {
    return new LevelsSheet.Row(
        row.mark(),
        upOrDown(row.ground(), writing),
        formats().tape(row.toGround()),
        toTop(row.toTop()),
        formats().tape(row.toUnderside()),
        formats().tape(row.toBottom()));
  }

  /** A reading is downwards; a top over the line is named as such. */
  private String toTop(Length down) {
    return down.isLessThan(Length.ZERO) ? upOrDown(down.negated(), writing) : formats().tape(down);
  }

  LevelsSheet.Row working() {
    return new LevelsSheet.Row(
        writing.texts().say("levels.working"),
        "",
        number("levels.to-ground"),
        number("levels.to-top"),
        number("depth-targets.datum-depth"),
        number("depth-targets.dug"));
  }

  private String number(String formula) {
    return packet.workings().numberOf(formula).orElse("");
  }

  List<LevelsSheet.PostRow> posts() {
    return levels
        .floor()
        .map(floor -> floor.posts().stream().map(this::post).toList())
        .orElse(List.of());
  }

  private LevelsSheet.PostRow post(Post post) {
    String toTop =
        levels.rows().stream()
            .filter(row -> row.mark().equals(post.mark()))
            .map(row -> toTop(row.toTop()))
            .findFirst()
            .orElse("");
    return new LevelsSheet.PostRow(
        post.mark(), toTop, size(post.toFloor()), post.cut().map(this::size).orElse(""));
  }

  private String size(Length up) {
    return up.isMoreThan(Length.ZERO) ? formats().tape(up) : writing.texts().say("levels.no-room");
  }

  LevelsSheet.PostRow postWorking() {
    return new LevelsSheet.PostRow(
        writing.texts().say("levels.working"),
        number("levels.to-top"),
        number("levels.to-floor"),
        number("levels.cut"));
  }

  GroundProfile.Pictures pictures() {
    List<GroundProfile.LevelLine> lines = new ArrayList<>();
    levels
        .line()
        .ifPresent(
            line ->
                lines.add(
                    new GroundProfile.LevelLine(
                        line.height(),
                        writing.texts().say("levels.picture.line"),
                        Pen.MEDIUM.boundary())));
    levels
        .floor()
        .ifPresent(
            floor ->
                lines.add(
                    new GroundProfile.LevelLine(
                        floor.height(), writing.texts().say("levels.picture.floor"), Pen.HEAVY)));
    return GroundProfile.draw(
        packet.placement().marks().stream().map(this::column).toList(),
        new GroundProfile.Style(
            formats().units(),
            writing.page().widthMm() - 1,
            lines,
            writing.texts().say("levels.picture.unknown"),
            writing.lettering()),
        "levels-profile",
        writing.texts().say("levels.picture"));
  }

  private GroundProfile.Column column(PlacedMark mark) {
    return levels.rows().stream()
        .filter(row -> row.mark().equals(mark.id()))
        .findFirst()
        .map(
            row ->
                new GroundProfile.Column(
                    row.mark(), Optional.of(heights(row)), formats().tape(row.toBottom())))
        .orElse(new GroundProfile.Column(mark.id(), Optional.empty(), ""));
  }

  private GroundProfile.Heights heights(Levels.Row row) {
    Length line = levels.line().orElseThrow().height();
    return new GroundProfile.Heights(
        line.minus(row.toBottom()),
        line.minus(row.toUnderside()),
        row.ground(),
        line.minus(row.toTop()),
        levels.floor().filter(floor -> row.kind() == MarkKind.SUPPORT).map(LevelsTables::postTop));
  }

  /** Posts end under the floor's build-up where that is known. */
  private static Length postTop(LevelFloor floor) {
    return floor.height().minus(floor.buildUp().orElse(Length.ZERO));
  }
}

package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pegbook.calc.floorframe.FloorFrame.BayRow;
import pegbook.calc.floorframe.FloorFrame.BeamSize;
import pegbook.calc.floorframe.FloorFrame.Built;
import pegbook.calc.floorframe.FloorFrame.JoistSize;
import pegbook.calc.floorframe.FloorFrame.Limit;
import pegbook.calc.floorframe.FloorFrame.PostRow;
import pegbook.figures.CutPiece;
import pegbook.figures.MarkRuns;
import pegbook.measure.Length;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.packet.Packet;
import pegbook.sheet.FloorFrameSheet.BeamRow;
import pegbook.sheet.FloorFrameSheet.PieceRow;
import pegbook.sheet.FloorFrameSheet.PostLine;
import pegbook.sheet.FloorFrameSheet.SizeRow;

/** The rows of the floor frame's tables: sizes, beams, posts, pieces; alike ones in one row. */
record FloorFrameRows(Packet packet, Built built, Writing writing) {
  private String say(String key) {
    return say(key, Map.of());
  }

  private String say(String key, Map<String, String> values) {
    return writing.texts().say("floor-frame." + key, values);
  }

  private Formats formats() {
    return writing.formats();
  }

  List<SizeRow> joists() {
    return built.joists().stream().map(this::joist).toList();
  }

  List<PieceRow> pieces() {
    return built.pieces().stream().map(this::piece).toList();
  }

  private SizeRow joist(JoistSize size) {
    return new SizeRow(
        size.size(), formats().length(size.allowed()), limit(size.limit()), size.isChosen());
  }

  private String limit(Limit limit) {
    return say("limit." + limit.name().toLowerCase(Locale.ROOT));
  }

  /** From the size before the chosen one on: what is less is not enough either. */
  List<SizeRow> beams() {
    int chosen = built.beams().indexOf(built.beam());
    return built.beams().stream().skip(Math.max(0, chosen - 1)).limit(4).map(this::beam).toList();
  }

  private SizeRow beam(BeamSize size) {
    return new SizeRow(
        size.name(),
        say("used", Map.of("part", formats().number(size.used().percent(), 0))),
        size.bay() + ", " + limit(size.limit()),
        size.isChosen());
  }

  private PieceRow piece(CutPiece piece) {
    return new PieceRow(
        piece.name(),
        say("piece." + piece.name().substring(0, 1).toLowerCase(Locale.ROOT)),
        piece.size(),
        formats().count(piece.count()),
        formats().length(piece.length()));
  }

  List<BeamRow> bays() {
    Map<BeamRow, List<String>> alike = new LinkedHashMap<>();
    for (BayRow bay : built.bays()) {
      BeamRow row =
          new BeamRow(
              "",
              formats().length(bay.span()),
              formats().area(bay.floor()),
              formats().force(bay.from()),
              formats().force(bay.to()),
              formats().in(bay.bearing(), small(), metric() ? 0 : 1));
      alike.computeIfAbsent(row, any -> new ArrayList<>()).add(bay.name());
    }
    List<BeamRow> rows = new ArrayList<>();
    alike.forEach(
        (row, names) ->
            rows.add(
                new BeamRow(
                    String.join(", ", names),
                    row.span(),
                    row.floor(),
                    row.from(),
                    row.to(),
                    row.bearing())));
    return rows;
  }

  private boolean metric() {
    return formats().units() == UnitSystem.METRIC;
  }

  private Unit small() {
    return metric() ? Unit.MILLIMETRE : Unit.INCH;
  }

  List<PostLine> posts() {
    Map<PostLine, List<String>> alike = new LinkedHashMap<>();
    for (PostRow post : built.posts()) {
      alike.computeIfAbsent(line(post), any -> new ArrayList<>()).add(post.mark());
    }
    List<PostLine> lines = new ArrayList<>();
    alike.forEach(
        (line, marks) ->
            lines.add(new PostLine(MarkRuns.brief(marks), line.load(), line.may(), line.cut())));
    return lines;
  }

  private PostLine line(PostRow post) {
    String cut =
        packet.levels().floor().stream()
            .flatMap(floor -> floor.posts().stream())
            .filter(each -> each.mark().equals(post.mark()))
            .flatMap(each -> each.cut().stream())
            .findFirst()
            .map(formats()::length)
            .orElseGet(() -> say("post.open"));
    return new PostLine(
        "", formats().force(post.load()), formats().length(down(post.mayStand())), cut);
  }

  private Length down(Length height) {
    Length step = metric() ? Length.ofMillimetres(100) : Length.ofInches(3);
    return height.setTo(step, pegbook.measure.Rounding.DOWN);
  }
}

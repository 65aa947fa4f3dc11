package pegbook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import pegbook.job.Heading;
import pegbook.packet.Packet;
import pegbook.render.PacketDocument;
import pegbook.render.PageSize;
import pegbook.render.TitleStrip;
import pegbook.sheet.Booklet;
import pegbook.sheet.Texts;

/** Turns a booklet of sheets into the document that the renderer prints. */
final class Documents {
  private Documents() {}

  static PacketDocument of(Booklet booklet, Packet packet) {
    Texts texts = booklet.texts();
    Heading heading = packet.job().heading();
    Map<String, Object> model = new LinkedHashMap<>(booklet.sheets());
    return new PacketDocument(
        booklet.template(),
        texts.language().tag(),
        booklet.title(),
        booklet.summary(),
        heading.owner().orElse(booklet.strip().maker()),
        heading.issued(),
        packet.jobHash(),
        new PageSize(heading.paper().width().millimetres(), heading.paper().height().millimetres()),
        strip(booklet.strip()),
        model,
        booklet.drawings(),
        key -> texts.has(key) ? Optional.of(texts.say(key)) : Optional.empty());
  }

  private static TitleStrip strip(Booklet.Strip strip) {
    return new TitleStrip(
        strip.job(),
        strip.revision(),
        strip.issued(),
        strip.owner(),
        strip.maker(),
        strip.hash(),
        strip.caution());
  }
}

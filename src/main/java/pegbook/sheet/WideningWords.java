package pegbook.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import pegbook.figures.AlikeHoles;
import pegbook.figures.Hole;
import pegbook.job.Widenings.Bell;
import pegbook.job.Widenings.Cap;
import pegbook.job.Widenings.Shape;

/**
 * What people are told of bells, pads and caps: how to dig, set and look at them.
 *
 * @param writing words and formats
 */
record WideningWords(Writing writing) {
  private String say(String key, Map<String, String> values) {
    return writing.texts().say("widening." + key, values);
  }

  /** A sentence for each kind of bell, for who digs. */
  List<String> dig(List<Hole> holes) {
    return each(holes, hole -> hole.widenings().bell().isPresent(), "dig.bell");
  }

  /** A sentence for each kind of pad, for who plans the digging. */
  List<String> pads(List<Hole> holes) {
    return each(holes, hole -> hole.widenings().pad().isPresent(), "dig.pad");
  }

  /** How tubes over pads and forms of caps are set. */
  List<String> form(List<Hole> holes) {
    List<String> sentences = new ArrayList<>(each(holes, Hole::isHungOverPad, "form.pad"));
    sentences.addAll(each(holes, hole -> hole.widenings().cap().isPresent(), "form.cap"));
    return sentences;
  }

  /** What is filled first, and when the soil goes in, where a tube hangs over its pad. */
  List<String> pour(List<Hole> holes) {
    return each(holes, Hole::isHungOverPad, "pour.pad");
  }

  /**
   * What is looked at before the pour, by the name of its box.
   *
   * @param bottoms holes whose bottom is filled
   * @param tops holes whose top is filled
   */
  Map<String, String> look(List<Hole> bottoms, List<Hole> tops) {
    Map<String, String> lines = new LinkedHashMap<>();
    for (AlikeHoles alike : AlikeHoles.of(bottoms)) {
      Hole hole = alike.first();
      if (hole.widenings().bell().isPresent()) {
        lines.put(hole.mark() + ".bell", say("look.bell", values(alike)));
      }
      if (hole.isHungOverPad()) {
        lines.put(hole.mark() + ".pad", say("look.pad", values(alike)));
      }
    }
    for (AlikeHoles alike : AlikeHoles.of(tops)) {
      Hole hole = alike.first();
      if (hole.widenings().cap().isPresent()) {
        lines.put(hole.mark() + ".cap", say("look.cap", values(alike)));
      }
    }
    return lines;
  }

  private List<String> each(List<Hole> holes, Predicate<Hole> wanted, String key) {
    List<Hole> some = holes.stream().filter(wanted).toList();
    return AlikeHoles.of(some).stream().map(alike -> say(key, values(alike))).toList();
  }

  /** Everything that a sentence may name. */
  private Map<String, String> values(AlikeHoles alike) {
    Formats formats = writing.formats();
    Hole hole = alike.first();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("holes", formats.names(alike.marks()));
    values.put("dug", formats.tape(hole.dug()));
    values.put("begins", formats.tape(hole.shaftDepth()));
    values.put("clear", formats.size(hole.column()));
    hole.widenings().bell().ifPresent(bell -> bell(values, bell, hole));
    hole.widenings().pad().ifPresent(pad -> values.put("thickness", formats.size(pad.thickness())));
    hole.widenings().cap().ifPresent(cap -> values.put("cap", cap(cap)));
    hole.widenings()
        .cap()
        .ifPresent(cap -> values.put("capThickness", formats.size(cap.thickness())));
    return values;
  }

  private void bell(Map<String, String> values, Bell bell, Hole hole) {
    Formats formats = writing.formats();
    values.put("diameter", formats.size(bell.diameter()));
    values.put("flare", formats.size(bell.flare()));
    values.put("edge", formats.tape(hole.shaftDepth().plus(bell.flare())));
  }

  /** "20 in across", "20 in square". */
  String cap(Cap cap) {
    String width = writing.formats().size(cap.width());
    return say(cap.shape() == Shape.ROUND ? "cap.round" : "cap.square", Map.of("width", width));
  }
}

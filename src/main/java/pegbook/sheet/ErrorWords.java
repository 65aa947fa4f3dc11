package pegbook.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pegbook.calc.markaccuracy.MarkAccuracy.Lean;
import pegbook.figures.TapeAccuracy;
import pegbook.job.Layout.TapeItself;
import pegbook.measure.Length;
import pegbook.measure.Rounding;
import pegbook.measure.Unit;
import pegbook.measure.UnitSystem;
import pegbook.published.TapeLimit;

/** Errors in words: small lengths, directions, how much better one thing is than another. */
record ErrorWords(Writing writing) {
  /** Ratios nearer to one than this are no difference. */
  private static final double SAME = 0.05;

  String say(String key) {
    return writing.texts().say(key);
  }

  String say(String key, Map<String, String> values) {
    return writing.texts().say(key, values);
  }

  /** A length that the job gives. */
  String length(Length length) {
    return writing.formats().length(length);
  }

  /** A reading of the tape. */
  String reading(Length length) {
    return writing.formats().tape(length);
  }

  /** A small length to the hundredth of an inch or the tenth of a millimetre, set up. */
  String error(Length error) {
    boolean imperial = writing.formats().units() == UnitSystem.IMPERIAL;
    Length step = imperial ? Length.ofInches(0.01) : Length.ofMillimetres(0.1);
    Unit unit = imperial ? Unit.INCH : Unit.MILLIMETRE;
    return writing.formats().in(error.setTo(step, Rounding.UP), unit, imperial ? 2 : 1);
  }

  /** Which way an error mostly lies. */
  String lean(Lean lean) {
    if (lean instanceof Lean.Towards towards) {
      return say("mark-accuracy.lean.towards", Map.of("mark", towards.mark()));
    }
    if (lean instanceof Lean.SquareTo square) {
      return say("mark-accuracy.lean.square", Map.of("mark", square.mark()));
    }
    if (lean instanceof Lean.Azimuth azimuth) {
      String angle = writing.formats().roundAngle(azimuth.azimuth());
      return say("mark-accuracy.lean.azimuth", Map.of("azimuth", angle));
    }
    return say(
        lean instanceof Lean.AllRound ? "mark-accuracy.lean.round" : "mark-accuracy.lean.nowhere");
  }

  /** How a baseline compares with the one in use. */
  String times(double ratio) {
    if (Math.abs(ratio - 1) < SAME) {
      return say("mark-accuracy.compared.same");
    }
    boolean better = ratio > 1;
    String number = writing.formats().number(better ? ratio : 1 / ratio, 1);
    return say(
        better ? "mark-accuracy.compared.better" : "mark-accuracy.compared.worse",
        Map.of("times", number));
  }

  /** How far one distance may be off, part by part. */
  List<String> tape(TapeAccuracy tape, Length tolerance) {
    Length distance =
        writing.formats().units() == UnitSystem.IMPERIAL ? Length.ofFeet(10) : new Length(3);
    List<String> lines = new ArrayList<>();
    lines.add(
        say(
            "mark-accuracy.tape.whole",
            Map.of(
                "distance", writing.formats().distance(distance),
                "sigma", error(tape.sigma(distance)),
                "reading", error(tape.reading()),
                "tape", error(tape.tapeSigma(distance)),
                "rounding", error(tape.roundingSigma()))));
    if (tape.itself() instanceof TapeItself.OfClass of) {
      TapeLimit limit = TapeLimit.find(of.tapeClass().name());
      lines.add(
          say(
              "mark-accuracy.tape.class",
              Map.of("class", limit.tapeClass(), "limit", error(limit.fromEndSurface(distance)))));
    } else {
      lines.add(
          say(
              tape.itself() instanceof TapeItself.CommonPractice
                  ? "mark-accuracy.tape.common"
                  : "mark-accuracy.tape.own"));
    }
    lines.add(say("mark-accuracy.tape.share", Map.of("tolerance", length(tolerance))));
    return lines;
  }
}

package pegbook.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pegbook.published.Citation;

/**
 * Something the reader must act on.
 *
 * <p>Its words stand in the text bundle: {@code finding.ID.title}, {@code finding.ID.text} (what
 * was found and what may happen) and {@code finding.ID.way} (what to do), with the arguments as
 * named placeholders.
 *
 * @param kind how hard it stands in the way
 * @param id its name in the text bundle: lower case, hyphens
 * @param subjects marks, holes or features that it is about, in order; empty: the whole job
 * @param place where in the job file it can be mended, such as "supports.depth"
 * @param arguments values for the words, by name of placeholder
 * @param decides who decides
 * @param citations what it leans on
 */
public record Finding(
    Kind kind,
    String id,
    List<String> subjects,
    String place,
    Map<String, Argument> arguments,
    Decider decides,
    List<Citation> citations) {

  /** How hard a finding stands in the way. */
  public enum Kind {
    /** Do not start, or not this hole. */
    STOP,
    /** Someone must decide. */
    ASK,
    /** Worth knowing. */
    NOTE
  }

  /** Who decides. */
  public enum Decider {
    OWNER,
    BUILDING_AUTHORITY,
    ELECTRICAL_AUTHORITY,
    UTILITY_SERVICE,
    WORK_SAFETY_AUTHORITY,
    ENGINEER,
    SURVEYOR,
    CREW
  }

  public Finding {
    subjects = List.copyOf(subjects);
    arguments = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
    citations = List.copyOf(citations);
  }

  /** A finding about the whole job, without arguments. */
  public static Finding of(Kind kind, String id, String place, Decider decides, Citation source) {
    return new Finding(kind, id, List.of(), place, Map.of(), decides, List.of(source));
  }

  /** The same about named marks, holes or features. */
  public Finding about(List<String> names) {
    return new Finding(kind, id, names, place, arguments, decides, citations);
  }

  /** The same with one more argument. */
  public Finding with(String name, Argument value) {
    Map<String, Argument> more = new LinkedHashMap<>(arguments);
    more.put(name, value);
    return new Finding(kind, id, subjects, place, more, decides, citations);
  }

  /** The same leaning on one more source. */
  public Finding citing(Citation source) {
    List<Citation> more = new java.util.ArrayList<>(citations);
    more.add(source);
    return new Finding(kind, id, subjects, place, arguments, decides, more);
  }

  /** The only subject, where there is just one. */
  public Optional<String> subject() {
    return subjects.size() == 1 ? Optional.of(subjects.get(0)) : Optional.empty();
  }
}

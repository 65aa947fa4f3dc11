package pegbook.testing;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pegbook.calc.depthtargets.DepthTargetsCalculator;
import pegbook.calc.placement.PlacementCalculator;
import pegbook.calc.powerline.PowerLine;
import pegbook.calc.powerline.PowerLineCalculator;
import pegbook.figures.Diggings;
import pegbook.figures.Placement;
import pegbook.figures.SafePeg;
import pegbook.figures.SpoilHeap;
import pegbook.job.Job;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.jobfile.Problem;

/** A small job with a power line; its keys are changed one by one. */
public final class PowerJob {
  private final Map<String, String> power = new LinkedHashMap<>();
  private final Map<String, String> job = new LinkedHashMap<>();

  private PowerJob() {
    job.put("title", "\"x\"");
    job.put("ground", "{\"soil\": \"loam\", \"frost\": {\"depth\": \"36 in\", \"from\": \"x\"}}");
    job.put("layout", "{\"outline\": {\"regular\": {\"sides\": 6, \"side\": \"6 ft\"}}}");
    power.put("voltage", "\"120 V\"");
    power.put("running", "\"12 A\"");
    power.put("breaker", "\"20 A\"");
  }

  /** 100 ft due north from a place 10 ft north of the centre. */
  public static PowerJob imperial() {
    return new PowerJob().route("0 ft, 110 ft", "0 ft, 10 ft");
  }

  /** 30 m due north from a place 3 m north of the centre, in Norway. */
  public static PowerJob metric() {
    PowerJob job = new PowerJob().job("units", "\"metric\"").route("0 m, 33 m", "0 m, 3 m");
    job.job("place", "{\"country\": \"NO\"}");
    return job.power("voltage", "\"230 V\"")
        .power("running", "\"10 A\"")
        .power("breaker", "\"16 A\"");
  }

  public PowerJob route(String... places) {
    power.put(
        "route", List.of(places).stream().collect(Collectors.joining("\", \"", "[\"", "\"]")));
    return this;
  }

  /** Sets a key of "power", in JSON. */
  public PowerJob power(String key, String json) {
    power.put(key, json);
    return this;
  }

  /** Sets a key of the job, in JSON. */
  public PowerJob job(String key, String json) {
    job.put(key, json);
    return this;
  }

  private static String object(Map<String, String> entries) {
    return entries.entrySet().stream()
        .map(entry -> "\"" + entry.getKey() + "\": " + entry.getValue())
        .collect(Collectors.joining(",\n", "{", "}"));
  }

  /** The job as it is read. */
  public Job read() {
    Map<String, String> all = new LinkedHashMap<>(job);
    all.put("power", object(power));
    byte[] bytes = object(all).getBytes(StandardCharsets.UTF_8);
    JobFile file = JobFileReader.read("x.json", bytes);
    if (file instanceof JobFile.Refused refused) {
      throw new IllegalArgumentException(
          refused.problems().stream().map(Problem::text).collect(Collectors.joining("\n")));
    }
    return ((JobFile.Read) file).job();
  }

  /** Its power line, without heaps and pegs. */
  public PowerLine plan() {
    return plan(List.of(), List.of());
  }

  /** Its power line among heaps and pegs. */
  public PowerLine plan(List<SpoilHeap> heaps, List<SafePeg> pegs) {
    Job read = read();
    Placement placement = PlacementCalculator.calculate(read);
    return PowerLineCalculator.calculate(
        read,
        placement,
        new Diggings(DepthTargetsCalculator.calculate(read, placement).holes(), heaps),
        pegs);
  }

  /** Route, conductors and trench. */
  public PowerLine.Line line() {
    return plan().line().orElseThrow();
  }
}

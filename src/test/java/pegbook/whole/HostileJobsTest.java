package pegbook.whole;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pegbook.jobfile.JobFile;
import pegbook.jobfile.JobFileReader;
import pegbook.testing.PageCheck;
import pegbook.testing.PdfReader;
import pegbook.testing.Problem;
import pegbook.testing.Rules;

/**
 * Jobs whose texts are template expressions, markup, scripts and links. They are printed as they
 * stand, nothing is worked out, no file is read and no server asked: one listens, and one file
 * waits to be printed.
 */
class HostileJobsTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Stands in a file that the texts point at; on no page. */
  private static final String SECRET = "QUAGGA9417";

  /** What the expressions would become if anything worked them out. */
  private static final List<String> WORKED_OUT = List.of("6029251", SECRET);

  private final AtomicInteger asked = new AtomicInteger();

  @TempDir Path folder;
  private HttpServer server;
  private List<String> hostile = List.of();

  @BeforeEach
  void setTraps() throws IOException {
    Path canary = Files.writeString(folder.resolve("canary.txt"), SECRET);
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          asked.incrementAndGet();
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
    String web = "http://127.0.0.1:" + server.getAddress().getPort() + "/x";
    String file = canary.toUri().toString();
    hostile =
        List.of(
            "[[${2417*2494.5}]]",
            "__${2417*2494.5}__",
            "#{site-plan.title}",
            "~{sheets/cover :: sheet}",
            "<img src='" + web + "'/>",
            "<script src='" + web + "'>",
            "</td></tr></table><p>",
            "<style>@import url(" + web + ")",
            "<link href='" + file + "'/>",
            "<object data='" + file + "'>",
            "&#65;&amp;&xxe;",
            "]]><!ENTITY x SYSTEM '" + file + "'>",
            "${T(java.lang.Runtime)}",
            "{mark} {0} %s %n \\u0041",
            "=cmd|' /C x'!A1");
  }

  @AfterEach
  void closeTraps() {
    server.stop(0);
  }

  @Test
  void printAsTheyStand() throws IOException {
    ObjectNode job = (ObjectNode) JSON.readTree(Path.of("input", "sky-deck.json").toFile());
    List<String> taken = new ArrayList<>();
    spoil(job, job, taken);
    assertThat(taken).hasSizeGreaterThan(6);
    Path input = Files.writeString(folder.resolve("job.json"), job.toPrettyString());
    Path output = folder.resolve("output");

    Printing.Said said = Printing.run("print", input.toString(), "--output", output.toString());

    assertThat(said.err()).isEmpty();
    assertThat(said.code()).isZero();
    StringBuilder printed = new StringBuilder();
    for (Path document : Printing.documents(output.resolve("job"))) {
      byte[] pdf = Files.readAllBytes(document);
      // A # of the job's own text is no lost letter.
      assertThat(PageCheck.problems(pdf, Rules.of(document)))
          .filteredOn(problem -> problem.kind() != Problem.Kind.MISSING_LETTER)
          .isEmpty();
      assertThat(new String(pdf, UTF_8)).doesNotContain("/Launch", "/JavaScript", "/URI");
      printed.append(PdfReader.read(pdf).text());
    }
    String letters = letters(printed.toString());
    assertThat(taken).allSatisfy(text -> assertThat(letters).contains(beginning(text)));
    assertThat(WORKED_OUT).allSatisfy(text -> assertThat(letters).doesNotContain(letters(text)));
    assertThat(asked).hasValue(0);
  }

  /**
   * Each text of a job becomes the next hostile one, where the job may still be printed with it.
   */
  private void spoil(ObjectNode job, JsonNode at, List<String> taken) {
    if (at instanceof ObjectNode object) {
      List<String> keys = new ArrayList<>();
      object.fieldNames().forEachRemaining(keys::add);
      for (String key : keys) {
        JsonNode before = object.get(key);
        if (before instanceof TextNode) {
          String text = hostile.get(taken.size() % hostile.size());
          object.put(key, text);
          if (isRead(job)) {
            taken.add(text);
          } else {
            object.set(key, before);
          }
        } else {
          spoil(job, before, taken);
        }
      }
    } else if (at instanceof ArrayNode row) {
      row.forEach(item -> spoil(job, item, taken));
    }
  }

  private static boolean isRead(ObjectNode job) {
    return JobFileReader.read("job.json", job.toString().getBytes(UTF_8)) instanceof JobFile.Read;
  }

  /** As much as stands on one line: read back, the lines of columns side by side alternate. */
  private static String beginning(String text) {
    return letters(text).substring(0, Math.min(9, letters(text).length()));
  }

  /**
   * Without spaces and line ends: a long text is broken over lines, and sheets may put it in small.
   */
  private static String letters(String text) {
    return text.replaceAll("\\s", "").toLowerCase(Locale.ROOT);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc\\u202edef",
        "bell\\u0007",
        "nul\\u0000",
        "half\\ud800",
        "zero\\u200bwidth",
        "\\u2066x"
      })
  void whatCannotBeSeenIsRefused(String title) throws IOException {
    String job = Files.readString(Path.of("input", "smallest.json"));
    refuses(
        job.replaceFirst(
            "\"title\": \"[^\"]*\"", "\"title\": \"" + title.replace("\\", "\\\\") + '"'));
  }

  @Test
  void endlessNamesAreRefused() throws IOException {
    String job = Files.readString(Path.of("input", "smallest.json"));
    refuses(job.replaceFirst("\"title\": \"[^\"]*\"", "\"title\": \"" + "x".repeat(10_000) + '"'));
  }

  private void refuses(String job) throws IOException {
    Path input = Files.writeString(folder.resolve("job.json"), job);
    Path output = folder.resolve("output");
    Printing.Said said = Printing.run("print", input.toString(), "--output", output.toString());
    assertThat(said.code()).isEqualTo(1);
    assertThat(said.err() + said.out()).contains("title").contains("job.json");
    assertThat(output.resolve("job")).doesNotExist();
  }
}

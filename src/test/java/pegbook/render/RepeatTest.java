package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same document gives the same bytes, wherever, whenever and beside whatever it is printed. */
class RepeatTest {
  @TempDir Path folder;

  @Test
  void anotherProcessInAnotherPlaceGivesTheSameBytes() throws Exception {
    Path here = print("here", List.of("-Duser.timezone=UTC", "-Duser.language=en"));
    Path there =
        print(
            "there",
            List.of(
                "-Duser.timezone=Asia/Kolkata",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Dfile.encoding=US-ASCII",
                "-XX:+UnlockExperimentalVMOptions",
                "-XX:hashCode=0"));
    for (String name : List.of("binder.pdf", "day.pdf")) {
      assertThat(there.resolve(name)).hasSameBinaryContentAs(here.resolve(name));
    }
  }

  private Path print(String name, List<String> options) throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve(name));
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(
        List.of(
            "-XX:TieredStopAtLevel=1",
            "-Djava.awt.headless=true",
            "-cp",
            System.getProperty("java.class.path"),
            PrintDemo.class.getName(),
            out.toString()));
    Path log = folder.resolve(name + ".log");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    assertThat(process.waitFor()).as(Files.readString(log)).isZero();
    assertThat(log).as("printing says nothing on the terminal").isEmptyFile();
    return out;
  }

  @Test
  void threadsMayShareARenderer() throws Exception {
    Renderer renderer = new Renderer(Demo.FOLDER, Demo.FACES);
    byte[] binder = renderer.render(Demo.binder());
    byte[] day = renderer.render(Demo.day());
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Callable<byte[]>> work = new ArrayList<>();
      for (int at = 0; at < 6; at++) {
        work.add(() -> renderer.render(Demo.binder()));
        work.add(() -> renderer.render(Demo.day()));
      }
      List<Future<byte[]>> printed = threads.invokeAll(work);
      for (int at = 0; at < printed.size(); at++) {
        assertThat(printed.get(at).get()).isEqualTo(at % 2 == 0 ? binder : day);
      }
    } finally {
      threads.shutdownNow();
    }
  }
}

package pegbook.render;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class RendererTest {
  private static final Renderer RENDERER = new Renderer(Demo.FOLDER, Demo.FACES);

  @Test
  void prints() throws IOException {
    Files.write(Path.of("target/binder.pdf"), RENDERER.render(Demo.binder()));
    Files.write(Path.of("target/day.pdf"), RENDERER.render(Demo.day()));
  }
}

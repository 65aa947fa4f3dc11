package pegbook.render;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Prints the demo packet in a process of its own: {@code PrintDemo FOLDER}. */
final class PrintDemo {
  private PrintDemo() {}

  public static void main(String[] arguments) throws IOException {
    Renderer renderer = new Renderer(Demo.FOLDER, Demo.FACES);
    Path folder = Path.of(arguments[0]);
    Files.write(folder.resolve("binder.pdf"), renderer.render(Demo.binder()));
    Files.write(folder.resolve("day.pdf"), renderer.render(Demo.day()));
  }
}

package pegbook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateFolderTest {
  @TempDir Path place;

  private TemplateFolder folder() throws IOException {
    Files.createDirectories(place.resolve("mine"));
    Files.createDirectories(place.resolve("home/templates"));
    return TemplateFolder.of(
        Optional.of(place.resolve("mine")), Optional.of(place.resolve("home")));
  }

  @Test
  void theUsersFolderComesBeforeTheHomeAndTheHomeBeforeTheProgram() throws IOException {
    TemplateFolder folder = folder();
    assertThat(folder.text("parts/page.html")).contains("title-strip");
    Files.createDirectories(place.resolve("home/templates/parts"));
    Files.writeString(place.resolve("home/templates/parts/page.html"), "home");
    assertThat(folder.text("parts/page.html")).isEqualTo("home");
    Files.createDirectories(place.resolve("mine/parts"));
    Files.writeString(place.resolve("mine/parts/page.html"), "mine ½");
    assertThat(folder.text("parts/page.html")).isEqualTo("mine ½");
    assertThat(folder.find("parts/none.html")).isEmpty();
    assertThatThrownBy(() -> folder.bytes("parts/none.html"))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("parts/none.html");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../secret", "/etc/hostname", "a/../../b", "a//b", "", ".hidden", "a\\b", "C:x"})
  void namesThatLeaveTheFolderAreRefused(String name) throws IOException {
    TemplateFolder folder = folder();
    assertThatThrownBy(() -> folder.find(name)).isInstanceOf(UncheckedIOException.class);
  }

  @Test
  void linksThatLeaveTheFolderAreRefused() throws IOException {
    TemplateFolder folder = folder();
    Path secret = Files.writeString(place.resolve("secret.html"), "secret");
    Files.createSymbolicLink(place.resolve("mine/out.html"), secret);
    assertThatThrownBy(() -> folder.find("out.html"))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("out.html");
  }

  @Test
  void aChosenFolderMustExist() {
    assertThatThrownBy(
            () -> TemplateFolder.of(Optional.of(place.resolve("absent")), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("absent");
  }
}

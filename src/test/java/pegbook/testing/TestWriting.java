package pegbook.testing;

import java.nio.file.Path;
import java.util.Optional;
import pegbook.job.Job;
import pegbook.lettering.Faces;
import pegbook.lettering.FontLettering;
import pegbook.render.TemplateFolder;
import pegbook.sheet.Texts;
import pegbook.sheet.Writing;

/** The packet's own words and fonts, for tests of sheets. */
public final class TestWriting {
  private static final TemplateFolder TEMPLATES =
      TemplateFolder.of(Optional.empty(), Optional.of(Path.of("")));
  private static final Texts TEXTS =
      Texts.read(file -> TEMPLATES.text("texts/en/" + file + ".properties"));
  private static final FontLettering LETTERING = new FontLettering(new Faces(TEMPLATES::bytes));

  private TestWriting() {}

  public static Writing of(Job job) {
    return Writing.of(job, TEXTS, LETTERING);
  }

  public static FontLettering lettering() {
    return LETTERING;
  }
}

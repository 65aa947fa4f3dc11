package pegbook.render;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.IEngineConfiguration;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.exceptions.TemplateEngineException;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.messageresolver.AbstractMessageResolver;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.AbstractConfigurableTemplateResolver;
import org.thymeleaf.templateresource.ITemplateResource;
import org.thymeleaf.templateresource.StringTemplateResource;

/** Fills the templates of a folder with sheet records; each template is parsed once. */
final class SheetTemplates {
  /** Holds the words of a document; no path can spell it. */
  private static final String TEXTS = "texts of the document";

  private final TemplateEngine engine = new TemplateEngine();

  SheetTemplates(TemplateFolder folder) {
    engine.setDialect(new TemplateDialect());
    engine.setTemplateResolver(new FolderResolver(folder));
    engine.setMessageResolver(new Words());
  }

  /**
   * The markup of a document.
   *
   * @throws RenderException when a template is missing or wrong, or names what is not there
   */
  String fill(PacketDocument document) {
    Context context = new Context(Locale.forLanguageTag(document.language()));
    document.model().forEach(context::setVariable);
    context.setVariable("strip", document.strip());
    context.setVariable(TEXTS, new Texts(document.texts()));
    try {
      return engine.process(document.template(), context);
    } catch (TemplateEngineException failed) {
      throw new RenderException(place(failed, document.template()), reason(failed), failed);
    }
  }

  private record Texts(Function<String, Optional<String>> of) {}

  private static String place(TemplateEngineException failed, String template) {
    if (!(failed instanceof TemplateProcessingException at) || at.getTemplateName() == null) {
      return template + ".html";
    }
    return at.getTemplateName() + ".html" + (at.getLine() == null ? "" : ":" + at.getLine());
  }

  /** The innermost reason, for the outer ones only say that something failed further in. */
  private static String reason(Throwable failed) {
    Throwable inner = failed;
    while (inner.getCause() != null) {
      inner = inner.getCause();
    }
    String message = String.valueOf(inner.getMessage());
    int place = message.indexOf(" (template: ");
    return place < 0 ? message : message.substring(0, place);
  }

  private static final class FolderResolver extends AbstractConfigurableTemplateResolver {
    private final TemplateFolder folder;

    FolderResolver(TemplateFolder folder) {
      this.folder = folder;
      setTemplateMode(TemplateMode.HTML);
      setForceTemplateMode(true);
      setCacheable(true);
    }

    @Override
    protected ITemplateResource computeTemplateResource(
        IEngineConfiguration configuration,
        @Nullable String owner,
        String template,
        String resource,
        @Nullable String encoding,
        @Nullable Map<String, Object> attributes) {
      return new StringTemplateResource(folder.text(template + ".html"));
    }
  }

  private static final class Words extends AbstractMessageResolver {
    @Override
    public String resolveMessage(
        ITemplateContext context, @Nullable Class<?> origin, String key, Object[] parameters) {
      if (parameters.length > 0) {
        throw new TemplateProcessingException(
            "#{" + key + "}: sheets fill in words, not templates");
      }
      return ((Texts) context.getVariable(TEXTS))
          .of()
          .apply(key)
          .orElseThrow(
              () -> new TemplateProcessingException("#{" + key + "}: there is no such text"));
    }

    @Override
    public String createAbsentMessageRepresentation(
        ITemplateContext context, @Nullable Class<?> origin, String key, Object[] parameters) {
      throw new TemplateProcessingException("#{" + key + "}: there is no such text");
    }
  }
}

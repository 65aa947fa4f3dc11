package pegbook.render;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.engine.TemplateData;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.processor.IProcessor;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.standard.expression.IStandardExpression;
import org.thymeleaf.standard.expression.IStandardExpressionParser;
import org.thymeleaf.standard.expression.StandardExpressionParser;
import org.thymeleaf.standard.processor.StandardAttrTagProcessor;
import org.thymeleaf.standard.processor.StandardBlockTagProcessor;
import org.thymeleaf.standard.processor.StandardCaseTagProcessor;
import org.thymeleaf.standard.processor.StandardClassappendTagProcessor;
import org.thymeleaf.standard.processor.StandardDefaultAttributesTagProcessor;
import org.thymeleaf.standard.processor.StandardEachTagProcessor;
import org.thymeleaf.standard.processor.StandardFragmentTagProcessor;
import org.thymeleaf.standard.processor.StandardIfTagProcessor;
import org.thymeleaf.standard.processor.StandardInsertTagProcessor;
import org.thymeleaf.standard.processor.StandardReplaceTagProcessor;
import org.thymeleaf.standard.processor.StandardSwitchTagProcessor;
import org.thymeleaf.standard.processor.StandardTextTagProcessor;
import org.thymeleaf.standard.processor.StandardUnlessTagProcessor;
import org.thymeleaf.standard.processor.StandardWithTagProcessor;
import org.thymeleaf.standard.processor.StandardXmlNsTagProcessor;
import org.thymeleaf.templatemode.TemplateMode;

/**
 * The part of the template language that a packet needs. Left out on purpose: unescaped text,
 * inlined expressions, and preprocessing, through which job text could become markup or be
 * evaluated.
 */
final class TemplateDialect extends StandardDialect {
  TemplateDialect() {
    super("Packet", PREFIX, PROCESSOR_PRECEDENCE);
    setVariableExpressionEvaluator(new RecordPaths());
    setExpressionParser(new WithoutPreprocessing());
    // Templates have no scripts; the default would start up the JSON library for them.
    setJavaScriptSerializer(
        (value, out) -> {
          throw new TemplateProcessingException("a template has no scripts");
        });
  }

  @Override
  public Set<IProcessor> getProcessors(String prefix) {
    TemplateMode mode = TemplateMode.HTML;
    Set<IProcessor> processors = new LinkedHashSet<>();
    processors.add(new StandardAttrTagProcessor(mode, prefix));
    processors.add(
        new StandardBlockTagProcessor(mode, prefix, StandardBlockTagProcessor.ELEMENT_NAME));
    processors.add(new StandardCaseTagProcessor(mode, prefix));
    processors.add(new StandardClassappendTagProcessor(prefix));
    processors.add(new StandardDefaultAttributesTagProcessor(mode, prefix));
    processors.add(new StandardEachTagProcessor(mode, prefix));
    processors.add(new StandardFragmentTagProcessor(mode, prefix));
    processors.add(new StandardIfTagProcessor(mode, prefix));
    processors.add(new StandardInsertTagProcessor(mode, prefix));
    processors.add(new StandardReplaceTagProcessor(mode, prefix));
    processors.add(new StandardSwitchTagProcessor(mode, prefix));
    processors.add(new StandardTextTagProcessor(mode, prefix));
    processors.add(new StandardUnlessTagProcessor(mode, prefix));
    processors.add(new StandardWithTagProcessor(mode, prefix));
    processors.add(new StandardXmlNsTagProcessor(mode, prefix));
    return processors;
  }

  private static final class WithoutPreprocessing implements IStandardExpressionParser {
    /** Templates in templates; a binder has three or four. */
    private static final int MOST_NESTED = 30;

    private final StandardExpressionParser parser = new StandardExpressionParser();

    @Override
    public IStandardExpression parseExpression(IExpressionContext context, String input) {
      if (input.contains("__")) {
        throw new TemplateProcessingException("preprocessing is not part of a template: " + input);
      }
      if (Thread.currentThread().isInterrupted()) {
        throw new TemplateProcessingException("the time is over");
      }
      if (context instanceof ITemplateContext inside
          && inside.getTemplateStack().size() > MOST_NESTED) {
        throw new TemplateProcessingException(
            "templates insert one another without end: " + lastOf(inside.getTemplateStack()));
      }
      return parser.parseExpression(context, input);
    }

    private static String lastOf(List<TemplateData> stack) {
      return stack.stream()
          .skip(stack.size() - 3)
          .map(TemplateData::getTemplate)
          .collect(Collectors.joining(" in "));
    }
  }
}

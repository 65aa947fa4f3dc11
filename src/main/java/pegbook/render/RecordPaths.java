package pegbook.render;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.engine.IterationStatusVar;
import org.thymeleaf.exceptions.TemplateProcessingException;
import org.thymeleaf.standard.expression.IStandardVariableExpression;
import org.thymeleaf.standard.expression.IStandardVariableExpressionEvaluator;
import org.thymeleaf.standard.expression.StandardExpressionExecutionContext;

/**
 * What stands between the braces of <code>${…}</code> in a template: a path of names such as {@code
 * sheet.rows} through records and maps, and nothing else. No call, no arithmetic, no class: so that
 * a template places text only, and job text is never evaluated.
 *
 * <p>A name that is not there is an error. An empty optional reads as nothing. A list also answers
 * {@code size} and {@code empty}, a string {@code empty}, the status of a loop {@code first},
 * {@code last}, {@code index}, {@code count}, {@code odd} and {@code even}.
 */
final class RecordPaths implements IStandardVariableExpressionEvaluator {
  private static final Pattern PATH = Pattern.compile("[a-zA-Z]\\w*(\\.[a-zA-Z]\\w*)*");

  private static final ClassValue<Map<String, Method>> ACCESSORS =
      new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
          Map<String, Method> accessors = new LinkedHashMap<>();
          for (RecordComponent component : type.getRecordComponents()) {
            component.getAccessor().setAccessible(true);
            accessors.put(component.getName(), component.getAccessor());
          }
          return accessors;
        }
      };

  @Override
  public @Nullable Object evaluate(
      IExpressionContext context,
      IStandardVariableExpression expression,
      StandardExpressionExecutionContext execution) {
    String path = expression.getExpression().strip();
    if (expression.getUseSelectionAsRoot() || !PATH.matcher(path).matches()) {
      throw new TemplateProcessingException(
          "${" + path + "} is not a path of names: a template places text only");
    }
    String[] steps = path.split("\\.", -1);
    if (!context.containsVariable(steps[0])) {
      throw new TemplateProcessingException("${" + path + "}: there is no " + steps[0]);
    }
    @Nullable Object value = unwrapped(context.getVariable(steps[0]));
    for (int at = 1; at < steps.length; at++) {
      value = unwrapped(step(value, steps[at], path));
    }
    return printable(value, path);
  }

  private static @Nullable Object unwrapped(@Nullable Object value) {
    return value instanceof Optional<?> optional ? optional.orElse(null) : value;
  }

  private static @Nullable Object step(@Nullable Object from, String name, String path) {
    if (from instanceof Map<?, ?> map && map.containsKey(name)) {
      return map.get(name);
    }
    if (from instanceof Record record) {
      return component(record, name, path);
    }
    if (from instanceof List<?> list && (name.equals("empty") || name.equals("size"))) {
      return name.equals("empty") ? list.isEmpty() : String.valueOf(list.size());
    }
    if (from instanceof String text && name.equals("empty")) {
      return text.isEmpty();
    }
    if (from instanceof IterationStatusVar status) {
      return status(status, name, path);
    }
    throw missing(from, name, path);
  }

  private static @Nullable Object component(Record record, String name, String path) {
    Method accessor = ACCESSORS.get(record.getClass()).get(name);
    if (accessor == null) {
      throw missing(record, name, path);
    }
    try {
      return accessor.invoke(record);
    } catch (ReflectiveOperationException failed) {
      throw new TemplateProcessingException("${" + path + "}: cannot read " + name, failed);
    }
  }

  private static TemplateProcessingException missing(
      @Nullable Object from, String name, String path) {
    String what = from == null ? "nothing" : from.getClass().getSimpleName();
    return new TemplateProcessingException("${" + path + "}: " + what + " has no " + name);
  }

  private static Object status(IterationStatusVar status, String name, String path) {
    return switch (name) {
      case "first" -> status.isFirst();
      case "last" -> status.isLast();
      case "odd" -> status.isOdd();
      case "even" -> status.isEven();
      case "index" -> String.valueOf(status.getIndex());
      case "count" -> String.valueOf(status.getCount());
      default -> throw new TemplateProcessingException("${" + path + "}: a loop has no " + name);
    };
  }

  private static @Nullable Object printable(@Nullable Object value, String path) {
    if (value == null
        || value instanceof String
        || value instanceof Boolean
        || value instanceof List<?>
        || value instanceof Map<?, ?>
        || value instanceof Record) {
      return value;
    }
    throw new TemplateProcessingException(
        "${"
            + path
            + "} is a "
            + value.getClass().getSimpleName()
            + ": sheets format, not templates");
  }
}

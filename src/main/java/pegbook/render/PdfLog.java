package pegbook.render;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;

/**
 * Takes what the PDF library logs: warnings and errors become complaints, the rest is dropped.
 * Named in {@code META-INF/services}, so that nothing reaches the user's terminal.
 */
public final class PdfLog extends LogFactory {
  private static final Log LOG = new Listener();

  @Override
  public Log getInstance(Class<?> from) {
    return LOG;
  }

  @Override
  public Log getInstance(String from) {
    return LOG;
  }

  @Override
  public @Nullable Object getAttribute(String name) {
    return null;
  }

  @Override
  public String[] getAttributeNames() {
    return new String[0];
  }

  @Override
  public void removeAttribute(String name) {}

  @Override
  public void setAttribute(String name, Object value) {}

  @Override
  public void release() {}

  private static final class Listener implements Log {
    @Override
    public void warn(Object message) {
      Complaints.heard(String.valueOf(message));
    }

    @Override
    public void warn(Object message, Throwable cause) {
      Complaints.heard(message + " (" + cause + ")");
    }

    @Override
    public void error(Object message) {
      warn(message);
    }

    @Override
    public void error(Object message, Throwable cause) {
      warn(message, cause);
    }

    @Override
    public void fatal(Object message) {
      warn(message);
    }

    @Override
    public void fatal(Object message, Throwable cause) {
      warn(message, cause);
    }

    @Override
    public void trace(Object message) {}

    @Override
    public void trace(Object message, Throwable cause) {}

    @Override
    public void debug(Object message) {}

    @Override
    public void debug(Object message, Throwable cause) {}

    @Override
    public void info(Object message) {}

    @Override
    public void info(Object message, Throwable cause) {}

    @Override
    public boolean isTraceEnabled() {
      return false;
    }

    @Override
    public boolean isDebugEnabled() {
      return false;
    }

    @Override
    public boolean isInfoEnabled() {
      return false;
    }

    @Override
    public boolean isWarnEnabled() {
      return true;
    }

    @Override
    public boolean isErrorEnabled() {
      return true;
    }

    @Override
    public boolean isFatalEnabled() {
      return true;
    }
  }
}

package pegbook.render;

/** A packet that could not be printed as it must be: names the template, its line, the reason. */
public final class RenderException extends RuntimeException {
  private static final long serialVersionUID = 1;

  public RenderException(String where, String reason) {
    super(where + ": " + reason);
  }

  public RenderException(String where, String reason, Throwable cause) {
    super(where + ": " + reason, cause);
  }
}

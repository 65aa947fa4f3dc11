package pegbook;

/** What the process ends with. */
final class ExitCode {
  static final int DONE = 0;

  /** A job has problems; the others were printed. */
  static final int PROBLEMS = 1;

  /** The command line was wrong, or a file or folder cannot be used. */
  static final int WRONG_USE = 2;

  /** A fault of the program. */
  static final int OUR_FAULT = 3;

  private ExitCode() {}
}

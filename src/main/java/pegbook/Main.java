package pegbook;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Starts the program: arguments and streams in, an exit code out. */
public final class Main {
  private Main() {}

  /** Runs the program and ends the process with its exit code. */
  public static void main(String[] args) {
    System.exit(run(args, System.out, System.err));
  }

  /**
   * Runs the program.
   *
   * @param args the command line
   * @param out where results and progress go
   * @param err where problems go
   * @return 0 done, 1 a job has problems, 2 wrong use, 3 our fault
   */
  public static int run(String[] args, PrintStream out, PrintStream err) {
    PrintWriter results = writer(out);
    PrintWriter problems = writer(err);
    int code =
        new CommandLine(new Commands(results, problems, isOnTerminal(err)))
            .setOut(results)
            .setErr(problems)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setExecutionExceptionHandler(Main::ourFault)
            .execute(args);
    results.flush();
    problems.flush();
    return code;
  }

  /**
   * Java tells only whether all its streams are on a terminal; from 22 on it does so where it is
   * started with {@code -Djdk.console=java.base}, as {@code bin/pegbook} does.
   */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isOnTerminal(PrintStream err) {
    return err == System.err && System.console() != null;
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  /** Only here a stack trace is shown: whoever reads it can send it to us. */
  private static int ourFault(
      Exception fault, CommandLine commandLine, CommandLine.ParseResult parsed) {
    PrintWriter err = commandLine.getErr();
    err.println("pegbook: this is our fault, not the job's; nothing was written for it.");
    fault.printStackTrace(err);
    return ExitCode.OUR_FAULT;
  }
}

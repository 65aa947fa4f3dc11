package pegbook.jobfile;

import java.util.Optional;

/** What may stand behind a key: reads it into its type, or complains and gives nothing. */
interface Value<T> {
  /** Reads a value. */
  Optional<T> read(Node node, Report report);

  /** What it is called where something else was found, such as "a length with its unit". */
  String called();
}

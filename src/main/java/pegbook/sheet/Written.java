package pegbook.sheet;

import java.util.Locale;

/** How a constant is called in the keys of the text bundle. */
final class Written {
  private Written() {}

  /** Lower case, hyphens. */
  static String id(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

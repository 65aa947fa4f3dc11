package pegbook;

import picocli.CommandLine;

/** The program's version, as the build wrote it into the jar. */
final class Version implements CommandLine.IVersionProvider {
  /** Number of this version; "under development" when run from classes. */
  static String number() {
    String built = Version.class.getPackage().getImplementationVersion();
    return built == null ? "under development" : built;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"pegbook " + number()};
  }
}

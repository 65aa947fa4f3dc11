package pegbook.job;

/** A language in which day sheets print; everything else of a packet is in English. */
public enum Language {
  ENGLISH("en"),
  SPANISH("es");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  /** Its tag, ISO 639; also the name of the folder of its words. */
  public String tag() {
    return tag;
  }
}

package pegbook.figures;

/** What stands on a mark. */
public enum MarkKind {
  SUPPORT,
  PIER
}

package pegbook.testing;

/**
 * A tag over some content.
 *
 * @param name what it is: "H1", "TD", "Figure", or "Artifact" for what is not content
 * @param element number of the element in the document's tag tree; 0 outside the tree
 */
public record Tag(String name, int element) {}

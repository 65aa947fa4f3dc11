package pegbook.testing;

/**
 * A tag over some content.
 *
 * @param name what it is: "H1", "TD", "Figure", or "Artifact" for what is not content
 * @param element number of the element in the document's tag tree; 0 outside the tree
 * @param place its place among the elements of the one around it, 0 for the first
 */
public record Tag(String name, int element, int place) {}

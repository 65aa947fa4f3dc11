package pegbook.testing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** The tag tree of a PDF: which tags stand over a piece of marked content of a page. */
final class TagTree {
  private final IdentityHashMap<COSBase, Map<Integer, List<Tag>>> tags = new IdentityHashMap<>();
  private int elements;

  TagTree(PDDocument document) {
    PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
    if (root != null) {
      walk(root, List.of());
    }
  }

  /**
   * The tags over a piece of marked content, outermost first; none when the tree does not know it.
   */
  List<Tag> over(PDPage page, int markedContent) {
    return tags.getOrDefault(page.getCOSObject(), Map.of()).getOrDefault(markedContent, List.of());
  }

  private void walk(PDStructureNode node, List<Tag> path) {
    int place = 0;
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        List<Tag> longer = new ArrayList<>(path);
        longer.add(new Tag(element.getStandardStructureType(), ++elements, place++));
        walk(element, List.copyOf(longer));
      } else if (kid instanceof PDMarkedContentReference reference) {
        PDPage page = reference.getPage() == null ? pageOf(node) : reference.getPage();
        put(page, reference.getMCID(), path);
      } else if (kid instanceof Integer number) {
        put(pageOf(node), number, path);
      }
    }
  }

  private static PDPage pageOf(PDStructureNode node) {
    return ((PDStructureElement) node).getPage();
  }

  private void put(PDPage page, int markedContent, List<Tag> path) {
    tags.computeIfAbsent(page.getCOSObject(), any -> new LinkedHashMap<>())
        .put(markedContent, path);
  }
}

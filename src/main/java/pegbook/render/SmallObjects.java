package pegbook.render;

import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Small objects of a document's tags. Left alone, each list of children and each number of a piece
 * on a page is written as an object with an address of its own, three of them for every tag; here
 * they are written inside the tag that has them, as nothing else refers to them.
 */
final class SmallObjects {
  private static final COSName ATTRIBUTES = COSName.A;
  private static final COSName KIND = COSName.S;

  private SmallObjects() {}

  /** Writes them inside. */
  static void inline(PDDocument pdf) {
    COSDictionary root =
        pdf.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.STRUCT_TREE_ROOT);
    Deque<COSDictionary> left = new ArrayDeque<>();
    if (root != null) {
      left.add(root);
    }
    while (!left.isEmpty()) {
      COSDictionary tag = left.pop();
      COSBase children = tag.getDictionaryObject(COSName.K);
      if (children instanceof COSArray list) {
        list.setDirect(true);
        list.forEach(child -> follow(child, left));
      } else {
        follow(children, left);
      }
      if (tag.getDictionaryObject(ATTRIBUTES) instanceof COSDictionary attributes) {
        attributes.setDirect(true);
      }
    }
  }

  /** A child is a tag of its own, or a piece of a page. */
  private static void follow(COSBase child, Deque<COSDictionary> left) {
    if (child instanceof COSDictionary item) {
      if (item.containsKey(KIND)) {
        left.push(item);
      } else {
        item.setDirect(true);
      }
    }
  }
}

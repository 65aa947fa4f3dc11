package pegbook.render;

import com.openhtmltopdf.pdfboxout.PageSupplier;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Pages that take hundreds of tagged pieces each, without comparing every piece with all before.
 */
final class TaggedPages implements PageSupplier {
  @Override
  public PDPage requestPage(
      PDDocument pdf, float width, float height, int page, int pageOfItsSheet) {
    PDPage added = new PDPage(new PDRectangle(width, height));
    PDResources resources = new PDResources();
    resources.getCOSObject().setItem(COSName.PROPERTIES, new Properties());
    added.setResources(resources);
    pdf.addPage(added);
    return added;
  }

  /**
   * The numbers of a page's tagged pieces. The library asks of each new one whether it is there
   * already, and would look through all of them; none is added twice.
   */
  private static final class Properties extends COSDictionary {
    @Override
    public boolean containsValue(Object value) {
      return false;
    }

    @Override
    public void setItem(COSName key, COSBase value) {
      value.setDirect(true);
      super.setItem(key, value);
    }
  }
}

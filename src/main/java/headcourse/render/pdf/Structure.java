package headcourse.render.pdf;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/**
 * The tree of tags of a document: a section for each page, in it headings, paragraphs, tables,
 * figures and links in the order of painting.
 */
final class Structure {
  private final COSDictionary root = Cos.dictionary("StructTreeRoot");
  private final COSDictionary document;
  private final COSArray parents = new COSArray();
  private int nextKey;
  private boolean titled;

  Structure() {
    document = element("Document", root);
    root.setItem(COSName.K, document);
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, parents);
    root.setItem(COSName.PARENT_TREE, tree);
  }

  COSDictionary root() {
    return root;
  }

  COSDictionary document() {
    return document;
  }

  /** A page's title, or a heading under it; the first of a document is a title. */
  COSDictionary heading(boolean title, COSDictionary section) {
    COSDictionary h = child(title || !titled ? "H1" : "H2", section);
    titled = true;
    return h;
  }

  /** Enters what a page's marked contents, or an annotation, belong to; gives the key. */
  int register(COSDictionary parentOfOne) {
    parents.add(Cos.integer(nextKey));
    parents.add(parentOfOne);
    return nextKey++;
  }

  /** Enters the elements of a page's marked contents, by number; gives the key. */
  int register(COSArray parentsByNumber) {
    parents.add(Cos.integer(nextKey));
    parents.add(parentsByNumber);
    return nextKey++;
  }

  COSDictionary finished() {
    root.setItem(Cos.name("ParentTreeNextKey"), Cos.integer(nextKey));
    return root;
  }

  /** A new element without a place among its parent's kids yet. */
  static COSDictionary element(String type, COSDictionary parent) {
    // Its type goes without saying, and there are many.
    COSDictionary e = new COSDictionary();
    e.setItem(COSName.S, Cos.name(type));
    e.setItem(COSName.P, parent);
    return e;
  }

  /** A new element as the last kid of its parent. */
  static COSDictionary child(String type, COSDictionary parent) {
    COSDictionary e = element(type, parent);
    add(parent, e);
    return e;
  }

  /** Adds a kid: an element, a marked content, an object reference. */
  static void add(COSDictionary parent, org.apache.pdfbox.cos.COSBase kid) {
    COSArray kids = parent.getCOSArray(COSName.K);
    if (kids == null) {
      kids = new COSArray();
      parent.setItem(COSName.K, kids);
    }
    kids.add(kid);
  }
}

package headcourse.render.pdf;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * The tree of tags of a document: a section for each page, in it headings, paragraphs, tables,
 * figures and links in the order of painting.
 */
final class Structure {
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement document = child("Document", root);
  private final Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
  private boolean titled;

  PDStructureElement section(String title) {
    PDStructureElement section = child("Sect", document);
    section.setTitle(title);
    return section;
  }

  /** A page's title, or a heading under it; the first of a document is a title. */
  PDStructureElement heading(boolean title, PDStructureElement section) {
    PDStructureElement h = child(title || !titled ? "H1" : "H2", section);
    titled = true;
    return h;
  }

  /** Enters what an annotation belongs to; gives the key. */
  int register(PDStructureElement parent) {
    parents.put(parents.size(), new PDParentTreeValue(parent.getCOSObject()));
    return parents.size() - 1;
  }

  /** Enters the elements of a page's marked contents, by number; gives the key. */
  int register(List<PDStructureElement> byNumber) {
    COSArray all = new COSArray();
    byNumber.forEach(e -> all.add(e.getCOSObject()));
    parents.put(parents.size(), new PDParentTreeValue(all));
    return parents.size() - 1;
  }

  PDStructureTreeRoot finished() {
    PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
    tree.setNumbers(parents);
    root.setParentTree(tree);
    root.setParentTreeNextKey(parents.size());
    return root;
  }

  /** A new element as the last kid of its parent. */
  static PDStructureElement child(String type, PDStructureNode parent) {
    PDStructureElement e = new PDStructureElement(type, parent);
    parent.appendKid(e);
    return e;
  }
}

package headcourse.render.pdf;

import headcourse.drawing.Page;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Ways through a document: bookmarks, page labels, links. */
final class Navigation {
  private final List<Page> pages;
  private final List<PDPage> sheets;
  private final Map<String, Anchor> anchors = new HashMap<>();

  /** Where a link leads, and what stands there, for those who have links read out. */
  private record Anchor(PDPageXYZDestination place, String text) {}

  private record Open(int level, PDOutlineNode node) {}

  Navigation(List<Page> pages, List<PDPage> sheets) {
    this.pages = pages;
    this.sheets = sheets;
    for (int i = 0; i < pages.size(); i++) {
      for (Page.Bookmark b : pages.get(i).bookmarks()) {
        anchors.putIfAbsent(b.anchor(), new Anchor(place(i, b), b.text()));
      }
    }
  }

  private PDPageXYZDestination place(int index, Page.Bookmark b) {
    PDPageXYZDestination place = new PDPageXYZDestination();
    place.setPage(sheets.get(index));
    place.setLeft(0);
    place.setTop((int) Math.ceil(PaperSpace.of(pages.get(index)).y(b.y())));
    return place;
  }

  /** The outline tree, or null where no page has a bookmark; only its first level is unfolded. */
  PDDocumentOutline outline() {
    PDDocumentOutline outline = new PDDocumentOutline();
    Deque<Open> open = new ArrayDeque<>(List.of(new Open(0, outline)));
    for (int i = 0; i < pages.size(); i++) {
      for (Page.Bookmark b : pages.get(i).bookmarks()) {
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(b.text());
        item.setDestination(place(i, b));
        int level = Math.max(1, b.level());
        while (open.peek().level() >= level) {
          open.pop();
        }
        open.peek().node().addLast(item);
        open.push(new Open(level, item));
      }
    }
    outline.openNode();
    return outline.hasChildren() ? outline : null;
  }

  PDPageLabels labels(PDDocument file) {
    PDPageLabels labels = new PDPageLabels(file);
    for (int i = 0; i < pages.size(); i++) {
      PDPageLabelRange range = new PDPageLabelRange();
      range.setPrefix(pages.get(i).label());
      labels.setLabelItem(i, range);
    }
    return labels;
  }

  /** Whether an anchor is in this document. */
  boolean has(String anchor) {
    return anchors.containsKey(anchor);
  }

  /** Makes the links of a page. */
  void link(int index, List<PagePainter.Link> links, Structure structure) throws IOException {
    List<PDAnnotation> annotations = new ArrayList<>();
    PaperSpace space = PaperSpace.of(pages.get(index));
    for (PagePainter.Link link : links) {
      Anchor target = anchors.get(link.mark().target());
      PDAnnotationLink a = new PDAnnotationLink();
      a.setRectangle(space.box(link.mark().box()));
      a.setBorder(new COSArray(List.of(COSInteger.ZERO, COSInteger.ZERO, COSInteger.ZERO)));
      a.setPrinted(true);
      a.setDestination(target.place());
      a.setContents(target.text());
      PDObjectReference reference = new PDObjectReference();
      reference.setReferencedObject(a);
      reference.setPage(sheets.get(index));
      link.element().appendKid(reference);
      a.setStructParent(structure.register(link.element()));
      annotations.add(a);
    }
    if (!annotations.isEmpty()) {
      sheets.get(index).setAnnotations(annotations);
    }
  }
}

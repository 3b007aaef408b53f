package headcourse.render.pdf;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;

/** Ways through a document: bookmarks, page labels, links. */
final class Navigation {
  private final List<Page> pages;
  private final List<COSDictionary> objects;
  private final Map<String, COSArray> anchors = new HashMap<>();

  /** What stands at an anchor, for those who have links read out. */
  private final Map<String, String> names = new HashMap<>();

  Navigation(List<Page> pages, List<COSDictionary> objects) {
    this.pages = pages;
    this.objects = objects;
    for (int i = 0; i < pages.size(); i++) {
      for (Page.Bookmark b : pages.get(i).bookmarks()) {
        anchors.putIfAbsent(b.anchor(), place(i, b));
        names.putIfAbsent(b.anchor(), b.text());
      }
    }
  }

  private COSArray place(int index, Page.Bookmark b) {
    COSBase top = PaperSpace.of(pages.get(index)).y(b.y());
    return Cos.array(objects.get(index), Cos.name("XYZ"), Cos.integer(0), top, COSNull.NULL);
  }

  private static final class Entry {
    final int level;
    final COSDictionary object;
    final List<Entry> kids = new ArrayList<>();

    Entry(int level, COSDictionary object) {
      this.level = level;
      this.object = object;
    }
  }

  /** The outline tree, or null where no page has a bookmark. */
  COSDictionary outline() {
    Entry root = new Entry(0, Cos.dictionary("Outlines"));
    List<Entry> open = new ArrayList<>(List.of(root));
    for (int i = 0; i < pages.size(); i++) {
      for (Page.Bookmark b : pages.get(i).bookmarks()) {
        COSDictionary item = new COSDictionary();
        item.setItem(COSName.TITLE, Cos.text(b.text()));
        item.setItem(COSName.DEST, place(i, b));
        Entry e = new Entry(b.level(), item);
        while (open.get(open.size() - 1).level >= Math.max(1, b.level())) {
          open.remove(open.size() - 1);
        }
        open.get(open.size() - 1).kids.add(e);
        open.add(e);
      }
    }
    if (root.kids.isEmpty()) {
      return null;
    }
    root.object.setInt(COSName.COUNT, tie(root));
    return root.object;
  }

  /** Links an entry with its kids; only the first level is unfolded. */
  private static int tie(Entry parent) {
    COSDictionary before = null;
    for (Entry kid : parent.kids) {
      kid.object.setItem(COSName.PARENT, parent.object);
      if (before == null) {
        parent.object.setItem(COSName.FIRST, kid.object);
      } else {
        before.setItem(COSName.NEXT, kid.object);
        kid.object.setItem(COSName.PREV, before);
      }
      before = kid.object;
      if (!kid.kids.isEmpty()) {
        kid.object.setInt(COSName.COUNT, -tie(kid));
      }
    }
    parent.object.setItem(COSName.LAST, before);
    return parent.kids.size();
  }

  COSDictionary labels() {
    COSArray nums = new COSArray();
    for (int i = 0; i < pages.size(); i++) {
      COSDictionary label = new COSDictionary();
      label.setItem(COSName.P, Cos.text(pages.get(i).label()));
      nums.add(Cos.integer(i));
      nums.add(label);
    }
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, nums);
    return tree;
  }

  /** Whether an anchor is in this document. */
  boolean has(String anchor) {
    return anchors.containsKey(anchor);
  }

  /** Makes the links of a page. */
  void link(int index, List<PagePainter.Link> links, Structure structure) {
    COSArray annotations = new COSArray();
    COSDictionary page = objects.get(index);
    PaperSpace space = PaperSpace.of(pages.get(index));
    for (PagePainter.Link link : links) {
      Mark.Link l = link.mark();
      COSDictionary element = link.element();
      COSDictionary a = Cos.dictionary("Annot");
      a.setItem(COSName.SUBTYPE, Cos.name("Link"));
      a.setItem(COSName.RECT, space.box(l.box()));
      a.setItem(COSName.BORDER, Cos.array(Cos.integer(0), Cos.integer(0), Cos.integer(0)));
      a.setInt(COSName.F, 4);
      a.setItem(COSName.DEST, anchors.get(l.target()));
      a.setItem(COSName.CONTENTS, Cos.text(names.get(l.target())));
      COSDictionary reference = Cos.dictionary("OBJR");
      reference.setItem(Cos.name("Obj"), a);
      reference.setItem(COSName.PG, page);
      Structure.add(element, reference);
      a.setInt(COSName.STRUCT_PARENT, structure.register(element));
      annotations.add(a);
    }
    if (annotations.size() > 0) {
      page.setItem(COSName.ANNOTS, annotations);
    }
  }
}

package headcourse.render.pdf;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.geom.Box;
import headcourse.text.Face;
import headcourse.text.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/**
 * Writes a bundle as a PDF/A-2b and PDF/UA-1 file: real text, tags, layers, bookmarks, page labels
 * and links. The same pages and seed give the same bytes.
 */
public final class PdfRenderer {
  private final PageSet set;
  private final COSDictionary catalogue = Cos.dictionary("Catalog");
  private final Structure structure = new Structure();
  private final Map<Face, Lettered> fonts = new EnumMap<>(Face.class);
  private final Map<Layer, COSDictionary> layers = new EnumMap<>(Layer.class);

  private PdfRenderer(PageSet set) {
    this.set = set;
  }

  /**
   * Writes a bundle.
   *
   * @param set its pages
   * @param seed what the file's identifier is made of: another job, another seed
   * @param out where to; not closed
   * @throws IOException if {@code out} does
   */
  public static void render(PageSet set, String seed, OutputStream out) throws IOException {
    PdfRenderer renderer = new PdfRenderer(set);
    renderer.pages();
    renderer.catalogue();
    for (Lettered l : renderer.fonts.values()) {
      l.finish();
    }
    COSDictionary trailer = new COSDictionary();
    trailer.setItem(COSName.ROOT, renderer.catalogue);
    trailer.setItem(COSName.INFO, Metadata.info(set));
    COSString id = id(seed);
    trailer.setItem(COSName.ID, Cos.array(id, id));
    // Not through PDDocument, which starts up the whole of AWT.
    out.write(ObjectFile.of(trailer));
  }

  /** FNV-1a, 64 bits (draft-eastlake-fnv), of the seed and of the seed backwards. */
  private static COSString id(String seed) {
    ByteBuffer b = ByteBuffer.allocate(16);
    b.putLong(hash(seed)).putLong(hash(new StringBuilder(seed).reverse().toString()));
    return new COSString(b.array(), true);
  }

  private static long hash(String seed) {
    long h = 0xcbf29ce484222325L;
    for (int i = 0; i < seed.length(); i++) {
      h = (h ^ seed.charAt(i)) * 0x100000001b3L;
    }
    return h;
  }

  private void pages() throws IOException {
    COSDictionary fontNames = new COSDictionary();
    for (Face f : Face.values()) {
      Lettered l = new Lettered(f);
      fonts.put(f, l);
      fontNames.setItem(Cos.name(f == Face.BOLD ? "B" : "R"), l.font());
    }
    COSDictionary layerNames = layers();
    List<COSDictionary> objects = new ArrayList<>();
    COSDictionary tree = Cos.dictionary("Pages");
    COSArray kids = new COSArray();
    tree.setInt(COSName.COUNT, set.pages().size());
    tree.setItem(COSName.KIDS, kids);
    catalogue.setItem(COSName.PAGES, tree);
    for (int i = 0; i < set.pages().size(); i++) {
      COSDictionary page = Cos.dictionary("Page");
      page.setItem(COSName.PARENT, tree);
      kids.add(page);
      objects.add(page);
    }
    Navigation navigation = new Navigation(set.pages(), objects);
    for (int i = 0; i < set.pages().size(); i++) {
      Page p = set.pages().get(i);
      COSDictionary object = objects.get(i);
      COSDictionary section = Structure.child("Sect", structure.document());
      section.setItem(COSName.T, Cos.text(p.title()));
      PagePainter painter =
          new PagePainter(p, set.second(), fonts, structure, section, object, navigation::has);
      object.setItem(COSName.CONTENTS, Cos.stream(painter.paint(), true));
      PaperSpace space = PaperSpace.of(p);
      COSArray box = space.box(Box.of(0, 0, p.width(), p.height()));
      if (space.unit() > 1) {
        object.setInt(Cos.name("UserUnit"), space.unit());
      }
      object.setItem(COSName.MEDIA_BOX, box);
      object.setItem(COSName.CROP_BOX, box);
      object.setItem(COSName.TRIM_BOX, box);
      COSDictionary resources = new COSDictionary();
      resources.setItem(COSName.FONT, fontNames);
      resources.setItem(COSName.PROPERTIES, layerNames);
      if (!painter.pictures().isEmpty()) {
        resources.setItem(COSName.XOBJECT, painter.xObjects());
      }
      object.setItem(COSName.RESOURCES, resources);
      object.setItem(Cos.name("Tabs"), COSName.S);
      object.setInt(COSName.STRUCT_PARENTS, structure.register(painter.parents()));
      navigation.link(i, painter.links(), structure);
    }
    COSDictionary outline = navigation.outline();
    if (outline != null) {
      catalogue.setItem(COSName.OUTLINES, outline);
      catalogue.setItem(COSName.PAGE_MODE, Cos.name("UseOutlines"));
    }
    catalogue.setItem(COSName.PAGE_LABELS, navigation.labels());
  }

  private COSDictionary layers() {
    Words words = Words.of(set.language().startsWith("es") ? "es" : "en");
    COSDictionary names = new COSDictionary();
    for (Layer l : Layer.values()) {
      COSDictionary group = Cos.dictionary("OCG");
      group.setItem(COSName.NAME, Cos.text(words.say("pdf." + l.name().toLowerCase(Locale.ROOT))));
      layers.put(l, group);
      names.setItem(Cos.name(l.resource()), group);
    }
    return names;
  }

  private void catalogue() {
    catalogue.setItem(COSName.LANG, Cos.text(set.language()));
    COSDictionary marked = new COSDictionary();
    marked.setBoolean(Cos.name("Marked"), true);
    catalogue.setItem(Cos.name("MarkInfo"), marked);
    catalogue.setItem(COSName.STRUCT_TREE_ROOT, structure.finished());
    catalogue.setItem(COSName.METADATA, Metadata.xmp(set));
    catalogue.setItem(COSName.OUTPUT_INTENTS, Cos.array(Metadata.outputIntent()));

    COSDictionary preferences = new COSDictionary();
    preferences.setItem(Cos.name("PrintScaling"), COSName.NONE);
    preferences.setBoolean(Cos.name("DisplayDocTitle"), true);
    preferences.setBoolean(Cos.name("PickTrayByPDFSize"), true);
    catalogue.setItem(COSName.VIEWER_PREFERENCES, preferences);

    COSArray groups = new COSArray();
    layers.values().forEach(groups::add);
    COSDictionary shown = new COSDictionary();
    shown.setItem(COSName.NAME, Cos.text("headcourse"));
    shown.setItem(COSName.ORDER, groups);
    COSDictionary properties = new COSDictionary();
    properties.setItem(COSName.OCGS, groups);
    properties.setItem(COSName.D, shown);
    catalogue.setItem(COSName.OCPROPERTIES, properties);
  }
}

package headcourse.render.pdf;

import headcourse.drawing.PageSet;
import headcourse.text.Face;
import headcourse.text.Words;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/**
 * What all pages of a document share.
 *
 * @param file the document
 * @param resources fonts, layers and pictures by the names that pages use
 * @param structure its tags
 * @param fonts each embedded once, and only the glyphs that are written
 * @param layers the layers that a reader can switch off
 * @param second marks text of the second language
 */
record Document(
    PDDocument file,
    PDResources resources,
    Structure structure,
    Map<Face, PDFont> fonts,
    Map<Layer, PDOptionalContentGroup> layers,
    PDPropertyList second) {

  /** An empty one for a bundle. */
  static Document of(PDDocument file, PageSet set) throws IOException {
    Map<Face, PDFont> fonts = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      fonts.put(face, PDType0Font.load(file, face.font(), true));
    }
    COSDictionary language = new COSDictionary();
    language.setString(COSName.LANG, set.second());
    return new Document(
        file,
        new PDResources(),
        new Structure(),
        fonts,
        layers(file, set),
        PDPropertyList.create(language));
  }

  private static Map<Layer, PDOptionalContentGroup> layers(PDDocument file, PageSet set) {
    Words words = Words.of(set.language());
    Map<Layer, PDOptionalContentGroup> groups = new EnumMap<>(Layer.class);
    PDOptionalContentProperties properties = new PDOptionalContentProperties();
    for (Layer l : Layer.values()) {
      String name = words.say("pdf." + l.name().toLowerCase(Locale.ROOT));
      PDOptionalContentGroup group = new PDOptionalContentGroup(name);
      properties.addGroup(group);
      groups.put(l, group);
    }
    file.getDocumentCatalog().setOCProperties(properties);
    return groups;
  }
}

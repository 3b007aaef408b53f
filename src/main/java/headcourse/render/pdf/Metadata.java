package headcourse.render.pdf;

import headcourse.drawing.PageSet;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/** What a document says about itself, in the catalogue, in Info and, the same again, in XMP. */
final class Metadata {
  private static final String CREATOR = "headcourse";

  /** PDF/A wants the one property described that it does not know, the claim to be PDF/UA. */
  private static final String UA_SCHEMA =
      "<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\">"
          + "<pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>"
          + "<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>"
          + "<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>"
          + "<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">"
          + "<pdfaProperty:name>part</pdfaProperty:name>"
          + "<pdfaProperty:valueType>Integer</pdfaProperty:valueType>"
          + "<pdfaProperty:category>internal</pdfaProperty:category>"
          + "<pdfaProperty:description>Part of ISO 14289</pdfaProperty:description>"
          + "</rdf:li></rdf:Seq></pdfaSchema:property>"
          + "</rdf:li></rdf:Bag></pdfaExtension:schemas>\n";

  private Metadata() {}

  /** Says it all. */
  static void write(PDDocument file, PageSet set) throws IOException {
    PDDocumentCatalog catalogue = file.getDocumentCatalog();
    catalogue.setLanguage(set.language());
    file.setDocumentInformation(info(set));
    PDMetadata xmp = new PDMetadata(file);
    xmp.importXMPMetadata(xmp(set).getBytes(StandardCharsets.UTF_8));
    catalogue.setMetadata(xmp);
    PDOutputIntent screen = new PDOutputIntent(intent(file));
    screen.setOutputConditionIdentifier("sRGB IEC61966-2.1");
    screen.setInfo("sRGB IEC61966-2.1");
    catalogue.addOutputIntent(screen);
  }

  // By hand: the library has Java read the profile, which writes its own signs into it.
  private static COSDictionary intent(PDDocument file) throws IOException {
    PDStream profile =
        new PDStream(file, new ByteArrayInputStream(ColourProfile.bytes()), COSName.FLATE_DECODE);
    profile.getCOSObject().setInt(COSName.N, 3);
    COSDictionary intent = new COSDictionary();
    intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
    intent.setItem(COSName.S, COSName.GTS_PDFA1);
    intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile);
    return intent;
  }

  private static PDDocumentInformation info(PageSet set) {
    PDDocumentInformation info = new PDDocumentInformation();
    info.setTitle(set.title());
    if (!set.author().isBlank()) {
      info.setAuthor(set.author());
    }
    info.setCreator(CREATOR);
    info.setProducer(CREATOR);
    if (dated(set)) {
      // As text: a calendar would bring the machine's zone and locale with it.
      String day = "D:" + set.date().replace("-", "") + "000000Z";
      info.setCustomMetadataValue("CreationDate", day);
      info.setCustomMetadataValue("ModDate", day);
    }
    return info;
  }

  /** The date is the job's; without one the document bears none. */
  private static boolean dated(PageSet set) {
    return set.date().length() == 10;
  }

  private static String xmp(PageSet set) {
    StringBuilder x = new StringBuilder(2048);
    x.append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n")
        .append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n")
        .append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n")
        .append("<rdf:Description rdf:about=\"\"")
        .append(" xmlns:dc=\"http://purl.org/dc/elements/1.1/\"")
        .append(" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\"")
        .append(" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\"")
        .append(" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\"")
        .append(" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\"")
        .append(" xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\"")
        .append(" xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\"")
        .append(" xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\">\n")
        .append("<pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>\n")
        .append("<pdfuaid:part>1</pdfuaid:part>\n")
        .append(UA_SCHEMA);
    x.append("<dc:format>application/pdf</dc:format>\n<dc:title><rdf:Alt>")
        .append("<rdf:li xml:lang=\"x-default\">");
    escape(x, set.title());
    x.append("</rdf:li></rdf:Alt></dc:title>\n");
    if (!set.author().isBlank()) {
      x.append("<dc:creator><rdf:Seq><rdf:li>");
      escape(x, set.author());
      x.append("</rdf:li></rdf:Seq></dc:creator>\n");
    }
    x.append("<dc:language><rdf:Bag><rdf:li>");
    escape(x, set.language());
    x.append("</rdf:li></rdf:Bag></dc:language>\n");
    x.append("<xmp:CreatorTool>" + CREATOR + "</xmp:CreatorTool>")
        .append("<pdf:Producer>" + CREATOR + "</pdf:Producer>\n");
    if (dated(set)) {
      String time = set.date() + "T00:00:00Z";
      x.append("<xmp:CreateDate>").append(time).append("</xmp:CreateDate>");
      x.append("<xmp:ModifyDate>").append(time).append("</xmp:ModifyDate>\n");
    }
    x.append("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>");
    return x.toString();
  }

  private static void escape(StringBuilder x, String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> x.append("&amp;");
        case '<' -> x.append("&lt;");
        case '>' -> x.append("&gt;");
        default -> x.append(c < ' ' || c >= '\uFFFE' ? ' ' : c);
      }
    }
  }
}

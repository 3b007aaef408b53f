package headcourse.render.pdf;

import headcourse.text.Face;
import headcourse.text.FontFile;
import headcourse.text.Octets;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/**
 * A face as one document uses it: embedded once, and only the glyphs that were asked for. A code in
 * a text is the number of the glyph in the subset.
 */
final class Lettered {
  private final Face face;
  private final FontSubset subset;

  /** Codes of characters that have been met, of those that most texts are of; 0: not yet. */
  private final int[] codes = new int[0x2200];

  /** The character of each code, to be found by a search. */
  private final List<Integer> characters = new ArrayList<>(List.of(0));

  private final COSDictionary font = Cos.dictionary("Font");

  Lettered(Face face) {
    this.face = face;
    this.subset = new FontSubset(face.font());
  }

  /** The font's object; complete after {@link #finish}. */
  COSDictionary font() {
    return font;
  }

  /** Writes the codes of a text. */
  void encode(String text, Content out) {
    int length = text.length();
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      int code = c < codes.length ? codes[c] : 0;
      if (code == 0) {
        int character = text.codePointAt(i);
        i += Character.charCount(character) - 1;
        code = code(character);
        if (character < codes.length) {
          codes[character] = code;
        }
      }
      out.code(code);
    }
  }

  private int code(int c) {
    int shown = face.shown(c);
    int code = subset.number(face.font().glyph(shown));
    if (code == characters.size()) {
      characters.add(shown);
    }
    return code;
  }

  /** Fills in the font's object, when all texts are written. */
  void finish() {
    int used = characters.size();
    byte[] file = subset.trueType();
    String name = tag() + "+" + face.postScriptName();
    COSDictionary cid = Cos.dictionary("Font");
    cid.setItem(COSName.SUBTYPE, Cos.name("CIDFontType2"));
    cid.setItem(COSName.BASE_FONT, Cos.name(name));
    COSDictionary system = new COSDictionary();
    system.setItem(Cos.name("Registry"), Cos.text("Adobe"));
    system.setItem(Cos.name("Ordering"), Cos.text("Identity"));
    system.setInt(Cos.name("Supplement"), 0);
    cid.setItem(COSName.CIDSYSTEMINFO, system);
    cid.setItem(Cos.name("CIDToGIDMap"), COSName.IDENTITY);
    cid.setItem(Cos.name("W"), Cos.array(Cos.integer(0), widths(used)));
    cid.setItem(Cos.name("FontDescriptor"), descriptor(name, file));
    font.setItem(COSName.SUBTYPE, Cos.name("Type0"));
    font.setItem(COSName.BASE_FONT, Cos.name(name));
    font.setItem(COSName.ENCODING, Cos.name("Identity-H"));
    font.setItem(Cos.name("DescendantFonts"), Cos.array(cid));
    font.setItem(Cos.name("ToUnicode"), Cos.stream(toUnicode(), true));
  }

  /** Six letters that tell this subset from another (ISO 32000-1, 9.6.4). */
  private String tag() {
    int hash = characters.hashCode() & 0x7FFFFFFF;
    StringBuilder s = new StringBuilder();
    for (int i = 0; i < 6; i++) {
      s.append((char) ('A' + hash % 26));
      hash /= 26;
    }
    return s.toString();
  }

  private COSArray widths(int used) {
    FontFile f = face.font();
    COSArray widths = new COSArray();
    for (int g : subset.glyphs().subList(0, used)) {
      widths.add(Cos.number(f.advance(g) * 1000.0 / f.unitsPerEm()));
    }
    return widths;
  }

  private COSDictionary descriptor(String name, byte[] file) {
    FontFile f = face.font();
    double unit = 1000.0 / f.unitsPerEm();
    ByteBuffer head = ByteBuffer.wrap(f.copy("head", 54));
    ByteBuffer hhea = ByteBuffer.wrap(f.copy("hhea", 36));
    COSArray box = new COSArray();
    for (int at = 36; at < 44; at += 2) {
      box.add(Cos.number(head.getShort(at) * unit));
    }
    COSDictionary d = Cos.dictionary("FontDescriptor");
    d.setItem(Cos.name("FontName"), Cos.name(name));
    // Symbolic: its codes are no standard encoding's.
    d.setInt(Cos.name("Flags"), 4);
    d.setItem(Cos.name("FontBBox"), box);
    d.setInt(Cos.name("ItalicAngle"), 0);
    d.setItem(Cos.name("Ascent"), Cos.number(hhea.getShort(4) * unit));
    d.setItem(Cos.name("Descent"), Cos.number(hhea.getShort(6) * unit));
    d.setItem(Cos.name("CapHeight"), Cos.number(Face.CAP_HEIGHT * 1000));
    d.setInt(Cos.name("StemV"), face == Face.BOLD ? 140 : 80);
    OctetStream embedded = Cos.stream(file, true);
    embedded.setInt(COSName.LENGTH1, file.length);
    d.setItem(Cos.name("FontFile2"), embedded);
    return d;
  }

  private byte[] toUnicode() {
    Octets s = new Octets(4096);
    s.put("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n")
        .put("/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n")
        .put("/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n")
        .put("1 begincodespacerange\n<0000> <ffff>\nendcodespacerange\n");
    // At most a hundred entries stand in one block.
    for (int from = 1; from < characters.size(); from += 100) {
      int to = Math.min(from + 100, characters.size());
      s.whole(to - from).put(" beginbfchar\n");
      for (int code = from; code < to; code++) {
        s.put('<').hex(code, 4).put("> <").hex(characters.get(code), 4).put(">\n");
      }
      s.put("endbfchar\n");
    }
    return s.put("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n").toBytes();
  }
}

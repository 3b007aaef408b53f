package headcourse.render.pdf;

import headcourse.text.Octets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.cos.ICOSVisitor;

/**
 * Writes a document's objects as a file (ISO 32000-1, 7.5); those that are not direct have numbers
 * in the order in which they are met. The library's own writer can sign and change files too, and
 * writes a byte at a time, which a short run feels.
 */
final class ObjectFile implements ICOSVisitor {
  private static final int TO_A_LINE = 10;

  private final Octets out = new Octets(1 << 16);
  private final Map<COSBase, Integer> numbers = new IdentityHashMap<>();
  private final Deque<COSBase> waiting = new ArrayDeque<>();

  /** Where each object stands, by number. */
  private int[] places = new int[512];

  private ObjectFile() {}

  /**
   * The file.
   *
   * @param trailer names the catalogue and what the document says about itself; its size is set
   */
  static byte[] of(COSDictionary trailer) throws IOException {
    ObjectFile file = new ObjectFile();
    // Octets above 127 in the second line tell that the file is not text.
    file.out.put("%PDF-1.7\n%".getBytes(StandardCharsets.US_ASCII));
    file.out.put("öäüß\n".getBytes(StandardCharsets.ISO_8859_1));
    file.number(trailer.getItem(COSName.ROOT));
    file.object(file.waiting.remove());
    COSBase info = trailer.getItem(COSName.INFO);
    file.number(info);
    file.waiting.removeLast();
    file.object(info);
    while (!file.waiting.isEmpty()) {
      file.object(file.waiting.remove());
    }
    file.end(trailer);
    return file.out.toBytes();
  }

  /** An object's number; one that is met for the first time is to be written. */
  private int number(COSBase object) {
    Integer known = numbers.get(object);
    if (known == null) {
      known = numbers.size() + 1;
      numbers.put(object, known);
      waiting.add(object);
    }
    return known;
  }

  private void object(COSBase object) throws IOException {
    int number = numbers.get(object);
    if (number >= places.length) {
      places = Arrays.copyOf(places, 2 * number);
    }
    places[number] = out.size();
    out.whole(number).put(" 0 obj\n");
    object.accept(this);
    line();
    out.put("endobj\n");
  }

  private void end(COSDictionary trailer) throws IOException {
    int start = out.size();
    int size = numbers.size() + 1;
    out.put("xref\n0 ").whole(size).put("\n0000000000 65535 f\r\n");
    for (int i = 1; i < size; i++) {
      out.padded(places[i], 10).put(" 00000 n\r\n");
    }
    trailer.setInt(COSName.SIZE, size);
    out.put("trailer\n");
    trailer.accept(this);
    out.put("startxref\n").whole(start).put("\n%%EOF\n");
  }

  /** Ends a line, where that has not been done. */
  private void line() {
    if (out.last() != '\n') {
      out.put('\n');
    }
  }

  private void value(COSBase value) throws IOException {
    if (value.isDirect() || !(value instanceof COSDictionary || value instanceof COSArray)) {
      value.accept(this);
    } else {
      out.whole(number(value)).put(" 0 R");
    }
  }

  @Override
  public void visitFromDictionary(COSDictionary d) throws IOException {
    out.put("<<\n");
    for (Map.Entry<COSName, COSBase> e : d.entrySet()) {
      visitFromName(e.getKey());
      out.put(' ');
      value(e.getValue());
      line();
    }
    out.put(">>\n");
  }

  @Override
  public void visitFromArray(COSArray a) throws IOException {
    out.put('[');
    int n = 0;
    for (COSBase each : a) {
      if (n > 0 && n % TO_A_LINE == 0) {
        line();
      } else if (n > 0) {
        out.put(' ');
      }
      value(each);
      n++;
    }
    out.put("]\n");
  }

  @Override
  public void visitFromStream(COSStream s) throws IOException {
    visitFromDictionary(s);
    out.put("stream\r\n");
    try (InputStream data = s.createRawInputStream()) {
      out.put(data.readAllBytes());
    }
    out.put("\r\nendstream\n");
  }

  /** A name; they are all the program's own, of regular characters (7.3.5). */
  @Override
  public void visitFromName(COSName name) {
    out.put('/').put(name.getName());
  }

  /** A text in brackets, or in hexadecimal digits where it is not ASCII on one line (7.3.4). */
  @Override
  public void visitFromString(COSString s) {
    byte[] bytes = s.getBytes();
    if (s.getForceHexForm() || !plain(bytes)) {
      out.put('<').put(s.toHexString()).put('>');
      return;
    }
    out.put('(');
    for (byte b : bytes) {
      if (b == '(' || b == ')' || b == '\\') {
        out.put('\\');
      }
      out.put((char) b);
    }
    out.put(')');
  }

  private static boolean plain(byte[] bytes) {
    for (byte b : bytes) {
      if (b < 0 || b == '\r' || b == '\n') {
        return false;
      }
    }
    return true;
  }

  @Override
  public void visitFromInt(COSInteger n) {
    long value = n.longValue();
    if (value < 0) {
      out.put('-');
    }
    out.whole(Math.abs(value));
  }

  @Override
  public void visitFromFloat(COSFloat f) throws IOException {
    ByteArrayOutputStream digits = new ByteArrayOutputStream();
    f.writePDF(digits);
    out.put(digits.toByteArray());
  }

  @Override
  public void visitFromBoolean(COSBoolean b) {
    out.put(b.getValue() ? "true" : "false");
  }

  @Override
  public void visitFromNull(COSNull n) {
    out.put("null");
  }

  /** A document of the library's; its trailer is all that counts here. */
  @Override
  public void visitFromDocument(COSDocument document) throws IOException {
    document.getTrailer().accept(this);
  }
}

package headcourse.render.pdf;

import headcourse.text.Octets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
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
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSString;

/**
 * Writes a document's objects as a file (ISO 32000-1, 7.5); those that are not direct have numbers
 * in the order in which they are met. The library's own writer can sign and change files too, and
 * writes a byte at a time, which a short run feels.
 */
final class ObjectFile {
  private static final int TO_A_LINE = 10;
  private static final byte[] OBJECT = Content.words(" 0 obj\n");
  private static final byte[] END = Content.words("endobj\n");
  private static final byte[] REFERENCE = Content.words(" 0 R");
  private static final byte[] OPEN = Content.words("<<\n");
  private static final byte[] CLOSE = Content.words(">>\n");
  private static final byte[] IN_USE = Content.words(" 00000 n\r\n");

  private final Octets out = new Octets(1 << 16);
  private final Map<COSDictionary, Integer> numbers = new IdentityHashMap<>();
  private final Deque<COSDictionary> waiting = new ArrayDeque<>();

  /** How each name is written; its text is made anew every time that it is asked for. */
  private final Map<COSName, byte[]> names = new IdentityHashMap<>();

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
    file.out.put("%PDF-1.7\n%");
    file.out.put("öäüß\n".getBytes(StandardCharsets.ISO_8859_1));
    file.number(trailer.getCOSDictionary(COSName.ROOT));
    file.object(file.waiting.remove());
    COSDictionary info = trailer.getCOSDictionary(COSName.INFO);
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
  private int number(COSDictionary object) {
    Integer known = numbers.get(object);
    if (known == null) {
      known = numbers.size() + 1;
      numbers.put(object, known);
      waiting.add(object);
    }
    return known;
  }

  private void object(COSDictionary object) throws IOException {
    int number = numbers.get(object);
    if (number >= places.length) {
      places = Arrays.copyOf(places, 2 * number);
    }
    places[number] = out.size();
    out.whole(number).put(OBJECT);
    dictionary(object);
    if (object instanceof OctetStream s) {
      out.put("stream\r\n").put(s.octets()).put("\r\nendstream\n");
    }
    out.put(END);
  }

  private void end(COSDictionary trailer) throws IOException {
    int start = out.size();
    int size = numbers.size() + 1;
    out.put("xref\n0 ").whole(size).put("\n0000000000 65535 f\r\n");
    for (int i = 1; i < size; i++) {
      out.padded(places[i], 10).put(IN_USE);
    }
    trailer.setInt(COSName.SIZE, size);
    out.put("trailer\n");
    dictionary(trailer);
    out.put("startxref\n").whole(start).put("\n%%EOF\n");
  }

  /** Ends a line, where that has not been done. */
  private void line() {
    if (out.last() != '\n') {
      out.put('\n');
    }
  }

  private void value(COSBase value) throws IOException {
    if (value instanceof COSName name) {
      name(name);
    } else if (value instanceof COSInteger n) {
      integer(n.longValue());
    } else if (value instanceof COSArray a) {
      array(a);
    } else if (value instanceof COSDictionary d) {
      if (d.isDirect()) {
        dictionary(d);
      } else {
        out.whole(number(d)).put(REFERENCE);
      }
    } else if (value instanceof COSString s) {
      text(s);
    } else if (value instanceof COSFloat f) {
      ByteArrayOutputStream digits = new ByteArrayOutputStream();
      f.writePDF(digits);
      out.put(digits.toByteArray());
    } else if (value instanceof COSBoolean b) {
      out.put(b.getValue() ? "true" : "false");
    } else if (value == COSNull.NULL) {
      out.put("null");
    } else {
      throw new IllegalArgumentException("not made here: " + value);
    }
  }

  private void dictionary(COSDictionary d) throws IOException {
    out.put(OPEN);
    for (Map.Entry<COSName, COSBase> e : d.entrySet()) {
      name(e.getKey());
      out.put(' ');
      value(e.getValue());
      line();
    }
    out.put(CLOSE);
  }

  private void array(COSArray a) throws IOException {
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
    out.put(']').put('\n');
  }

  /** A name; they are all the program's own, of regular characters (7.3.5). */
  private void name(COSName name) {
    byte[] known = names.get(name);
    if (known == null) {
      known = Content.words("/" + name.getName());
      names.put(name, known);
    }
    out.put(known);
  }

  private void integer(long n) {
    if (n < 0) {
      out.put('-');
    }
    out.whole(Math.abs(n));
  }

  /** A text in brackets, or in hexadecimal digits where it is not ASCII on one line (7.3.4). */
  private void text(COSString s) {
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
}

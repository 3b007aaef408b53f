package headcourse.render.pdf;

import java.io.ByteArrayOutputStream;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;

/** Short ways to make the objects that a document is built of. */
final class Cos {
  // Packs in half the time of the usual level, into files a tenth longer.
  private static final int DEFLATE = 2;

  private Cos() {}

  static COSName name(String s) {
    return COSName.getPDFName(s);
  }

  static COSDictionary dictionary(String type) {
    COSDictionary d = new COSDictionary();
    d.setItem(COSName.TYPE, name(type));
    return d;
  }

  static COSArray array(COSBase... items) {
    COSArray a = new COSArray();
    for (COSBase b : items) {
      a.add(b);
    }
    return a;
  }

  /** A text string: ASCII as it is, anything else as UTF-16. */
  static COSString text(String s) {
    return new COSString(s);
  }

  static COSInteger integer(long n) {
    return COSInteger.get(n);
  }

  /** A number kept to four decimals. */
  static COSNumber number(double v) {
    long n = Math.round(v * 10000);
    if (n % 10000 == 0) {
      return COSInteger.get(n / 10000);
    }
    return new COSFloat(n / 10000f);
  }

  /** A stream; packed here, since the library's filters take long to get going. */
  static OctetStream stream(byte[] data, boolean pack) {
    byte[] octets = pack ? packed(data) : data;
    OctetStream s = new OctetStream(octets);
    s.setInt(COSName.LENGTH, octets.length);
    if (pack) {
      s.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    }
    return s;
  }

  private static byte[] packed(byte[] data) {
    Deflater deflater = new Deflater(DEFLATE);
    deflater.setInput(data);
    deflater.finish();
    ByteArrayOutputStream out = new ByteArrayOutputStream(data.length / 2 + 64);
    byte[] buffer = new byte[8192];
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return out.toByteArray();
  }
}

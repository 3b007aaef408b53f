package headcourse.render.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/**
 * Turns a PNG (W3C PNG specification, not interlaced) or a JPEG into an image object, passing the
 * compressed samples on as they are; only a PNG with transparency is taken apart.
 */
final class PictureObject {
  private PictureObject() {}

  static OctetStream of(String type, byte[] data) throws IOException {
    return type.equals("image/jpeg") ? jpeg(data) : png(data);
  }

  private static OctetStream image(byte[] raw, int width, int height, int bits, COSBase space) {
    OctetStream s = Cos.stream(raw, false);
    s.setItem(COSName.TYPE, COSName.XOBJECT);
    s.setItem(COSName.SUBTYPE, COSName.IMAGE);
    s.setInt(COSName.WIDTH, width);
    s.setInt(COSName.HEIGHT, height);
    s.setInt(COSName.BITS_PER_COMPONENT, bits);
    s.setItem(COSName.COLORSPACE, space);
    return s;
  }

  private static OctetStream jpeg(byte[] data) throws IOException {
    ByteBuffer b = ByteBuffer.wrap(data);
    int at = 2;
    while (at + 9 < data.length) {
      int marker = b.get(at + 1) & 255;
      // A start of frame, whatever its kind, but no table that shares its range of codes.
      if (marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC) {
        boolean grey = b.get(at + 9) == 1;
        OctetStream s =
            image(
                data,
                b.getShort(at + 7) & 0xFFFF,
                b.getShort(at + 5) & 0xFFFF,
                8,
                grey ? COSName.DEVICEGRAY : COSName.DEVICERGB);
        s.setItem(COSName.FILTER, COSName.DCT_DECODE);
        return s;
      }
      at += 2 + (b.getShort(at + 2) & 0xFFFF);
    }
    throw new IOException("a JPEG without a frame");
  }

  private static OctetStream png(byte[] data) throws IOException {
    ByteBuffer b = ByteBuffer.wrap(data);
    int width = b.getInt(16);
    int height = b.getInt(20);
    int bits = b.get(24);
    int kind = b.get(25);
    ByteArrayOutputStream samples = new ByteArrayOutputStream();
    byte[] palette = new byte[0];
    for (int at = 8; at + 12 <= data.length; at += 12 + b.getInt(at)) {
      int length = b.getInt(at);
      int name = b.getInt(at + 4);
      if (name == 0x49444154) {
        samples.write(data, at + 8, length);
      } else if (name == 0x504C5445) {
        palette = java.util.Arrays.copyOfRange(data, at + 8, at + 8 + length);
      }
    }
    int channels = kind == 2 ? 3 : kind == 4 ? 2 : kind == 6 ? 4 : 1;
    if (kind >= 4) {
      return transparent(samples.toByteArray(), width, height, bits / 8, channels);
    }
    COSBase space = kind == 2 ? COSName.DEVICERGB : COSName.DEVICEGRAY;
    if (kind == 3) {
      COSString colours = new COSString(palette);
      space =
          Cos.array(
              COSName.INDEXED, COSName.DEVICERGB, Cos.integer(palette.length / 3 - 1), colours);
    }
    OctetStream s = image(samples.toByteArray(), width, height, bits, space);
    s.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    COSDictionary parameters = new COSDictionary();
    parameters.setInt(COSName.PREDICTOR, 15);
    parameters.setInt(COSName.COLORS, channels);
    parameters.setInt(COSName.BITS_PER_COMPONENT, bits);
    parameters.setInt(COSName.COLUMNS, width);
    s.setItem(COSName.DECODE_PARMS, parameters);
    return s;
  }

  private static OctetStream transparent(
      byte[] packed, int width, int height, int depth, int channels) throws IOException {
    byte[] rows = unfiltered(packed, width * channels * depth, height, channels * depth);
    int colours = channels - 1;
    byte[] colour = new byte[width * height * colours];
    byte[] cover = new byte[width * height];
    for (int i = 0; i < width * height; i++) {
      for (int k = 0; k < colours; k++) {
        colour[i * colours + k] = rows[(i * channels + k) * depth];
      }
      cover[i] = rows[(i * channels + colours) * depth];
    }
    COSBase space = colours == 3 ? COSName.DEVICERGB : COSName.DEVICEGRAY;
    OctetStream s = flate(colour, width, height, space);
    s.setItem(COSName.SMASK, flate(cover, width, height, COSName.DEVICEGRAY));
    return s;
  }

  private static OctetStream flate(byte[] plain, int width, int height, COSBase space) {
    OctetStream s = Cos.stream(plain, true);
    OctetStream frame = image(new byte[0], width, height, 8, space);
    for (COSName key : frame.keySet()) {
      if (!key.equals(COSName.LENGTH)) {
        s.setItem(key, frame.getItem(key));
      }
    }
    return s;
  }

  /** Undoes the row filters of PNG, section 9. */
  private static byte[] unfiltered(byte[] packed, int row, int height, int pixel)
      throws IOException {
    byte[] out = new byte[row * height];
    byte[] above = new byte[row];
    byte[] line = new byte[row + 1];
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(packed);
      for (int y = 0; y < height; y++) {
        for (int n = 0; n < line.length; ) {
          int got = inflater.inflate(line, n, line.length - n);
          if (got == 0) {
            throw new IOException("a PNG that ends too soon");
          }
          n += got;
        }
        for (int x = 0; x < row; x++) {
          int left = x < pixel ? 0 : out[y * row + x - pixel] & 255;
          int up = above[x] & 255;
          int corner = x < pixel ? 0 : above[x - pixel] & 255;
          int guess =
              switch (line[0]) {
                case 1 -> left;
                case 2 -> up;
                case 3 -> (left + up) / 2;
                case 4 -> paeth(left, up, corner);
                default -> 0;
              };
          out[y * row + x] = (byte) (line[x + 1] + guess);
        }
        System.arraycopy(out, y * row, above, 0, row);
      }
    } catch (DataFormatException e) {
      throw new IOException("a PNG that cannot be unpacked", e);
    } finally {
      inflater.end();
    }
    return out;
  }

  private static int paeth(int a, int b, int c) {
    int p = a + b - c;
    int pa = Math.abs(p - a);
    int pb = Math.abs(p - b);
    int pc = Math.abs(p - c);
    return pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
  }
}

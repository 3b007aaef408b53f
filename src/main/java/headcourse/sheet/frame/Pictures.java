package headcourse.sheet.frame;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** A PNG or JPEG out of a {@code data:} address, looked through so that a renderer can trust it. */
final class Pictures {
  private static final int MOST_PIXELS = 4_000_000;

  /**
   * A picture that was looked through.
   *
   * @param type {@code image/png} or {@code image/jpeg}
   * @param width pixels
   * @param height pixels
   */
  record Picture(String type, byte[] data, int width, int height) {}

  private Pictures() {}

  /**
   * Reads an address.
   *
   * @throws IllegalArgumentException with what is wrong
   */
  static Picture read(String address) {
    String type;
    if (address.startsWith("data:image/png;base64,")) {
      type = "image/png";
    } else if (address.startsWith("data:image/jpeg;base64,")) {
      type = "image/jpeg";
    } else {
      throw new IllegalArgumentException("a picture must be data:image/png;base64,… or jpeg");
    }
    byte[] data = Base64.getMimeDecoder().decode(address.substring(address.indexOf(',') + 1));
    try {
      return type.equals("image/png") ? png(data) : jpeg(data);
    } catch (IndexOutOfBoundsException | java.nio.BufferUnderflowException e) {
      throw new IllegalArgumentException("a picture that ends too soon", e);
    }
  }

  private static Picture sized(String type, byte[] data, int width, int height) {
    if (width < 1 || height < 1 || (long) width * height > MOST_PIXELS) {
      throw new IllegalArgumentException(
          "a picture of " + width + " by " + height + " pixels; at most 4 million");
    }
    return new Picture(type, data, width, height);
  }

  private static Picture png(byte[] data) {
    ByteBuffer b = ByteBuffer.wrap(data);
    if (b.getLong(0) != 0x89504E470D0A1A0AL || b.getInt(12) != 0x49484452) {
      throw new IllegalArgumentException("not a PNG");
    }
    int bits = b.get(24);
    int kind = b.get(25);
    boolean depth =
        switch (kind) {
          case 0 -> bits == 1 || bits == 2 || bits == 4 || bits == 8 || bits == 16;
          case 2, 4, 6 -> bits == 8 || bits == 16;
          case 3 -> bits == 1 || bits == 2 || bits == 4 || bits == 8;
          default -> false;
        };
    if (!depth || b.get(28) != 0) {
      throw new IllegalArgumentException("an interlaced or broken PNG");
    }
    Picture p = sized("image/png", data, b.getInt(16), b.getInt(20));
    ByteArrayOutputStream samples = new ByteArrayOutputStream();
    int colours = 0;
    for (int at = 8; at + 12 <= data.length; ) {
      int length = b.getInt(at);
      if (length < 0 || length > data.length - at - 12) {
        throw new IllegalArgumentException("a PNG that ends too soon");
      }
      if (b.getInt(at + 4) == 0x49444154) {
        samples.write(data, at + 8, length);
      } else if (b.getInt(at + 4) == 0x504C5445) {
        colours = length / 3;
      }
      at += 12 + length;
    }
    if (kind == 3 && colours == 0) {
      throw new IllegalArgumentException("a PNG without its palette");
    }
    int channels = kind == 2 ? 3 : kind == 4 ? 2 : kind == 6 ? 4 : 1;
    long row = ((long) p.width() * channels * bits + 7) / 8 + 1;
    unpack(samples.toByteArray(), row * p.height());
    return p;
  }

  private static void unpack(byte[] packed, long wanted) {
    Inflater inflater = new Inflater();
    byte[] buffer = new byte[8192];
    long size = 0;
    try {
      inflater.setInput(packed);
      int n;
      while (size <= wanted && (n = inflater.inflate(buffer)) > 0) {
        size += n;
      }
    } catch (DataFormatException e) {
      throw new IllegalArgumentException("a PNG that cannot be unpacked", e);
    } finally {
      inflater.end();
    }
    if (size != wanted) {
      throw new IllegalArgumentException("a PNG with more or fewer pixels than it says");
    }
  }

  private static Picture jpeg(byte[] data) {
    ByteBuffer b = ByteBuffer.wrap(data);
    if ((b.getShort(0) & 0xFFFF) != 0xFFD8) {
      throw new IllegalArgumentException("not a JPEG");
    }
    int at = 2;
    while (true) {
      int marker = b.get(at + 1) & 255;
      if ((b.get(at) & 255) != 255 || marker < 0xC0 || marker == 0xD9) {
        throw new IllegalArgumentException("a broken JPEG");
      }
      if (marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC) {
        int components = b.get(at + 9);
        if (b.get(at + 4) != 8 || components != 1 && components != 3) {
          throw new IllegalArgumentException("a JPEG in other than grey or RGB with 8 bits");
        }
        return sized("image/jpeg", data, b.getShort(at + 7) & 0xFFFF, b.getShort(at + 5) & 0xFFFF);
      }
      at += 2 + (b.getShort(at + 2) & 0xFFFF);
    }
  }
}

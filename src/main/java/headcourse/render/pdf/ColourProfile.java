package headcourse.render.pdf;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * A display profile after ICC.1:2010 (version 4.3) with the primaries, white and transfer curve of
 * IEC 61966-2-1, written out from numbers so that it does not depend on the machine.
 */
final class ColourProfile {
  private ColourProfile() {}

  /** Primaries and white of IEC 61966-2-1, adapted to D50 by the Bradford matrix. */
  private static final double[][] XYZ = {
    {0.9642, 1.0, 0.8249},
    {0.43607, 0.22249, 0.01392},
    {0.38515, 0.71687, 0.09708},
    {0.14307, 0.06061, 0.71410}
  };

  /** D65 to D50, Bradford. */
  private static final double[] ADAPTATION = {
    1.04788, 0.02292, -0.05022, 0.02959, 0.99048, -0.01707, -0.00925, 0.01508, 0.75168
  };

  /** Parametric curve of type 3: g, a, b, c, d. */
  private static final double[] CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

  static byte[] bytes() {
    byte[] text = words("RGB display, IEC 61966-2-1");
    byte[] rights = words("No rights reserved");
    byte[] curve = numbers("para", new byte[] {0, 3, 0, 0}, CURVE);
    byte[][] data = {
      text,
      rights,
      numbers("XYZ ", new byte[0], XYZ[0]),
      numbers("XYZ ", new byte[0], XYZ[1]),
      numbers("XYZ ", new byte[0], XYZ[2]),
      numbers("XYZ ", new byte[0], XYZ[3]),
      numbers("sf32", new byte[0], ADAPTATION),
      curve
    };
    String[] names = {"desc", "cprt", "wtpt", "rXYZ", "gXYZ", "bXYZ", "chad", "rTRC"};
    String[] shared = {"gTRC", "bTRC"};

    int count = names.length + shared.length;
    int at = 128 + 4 + 12 * count;
    ByteArrayOutputStream table = new ByteArrayOutputStream();
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    int32(table, count);
    for (int i = 0; i < names.length; i++) {
      int offset = at + body.size();
      entry(table, names[i], offset, data[i].length);
      body.writeBytes(data[i]);
      while (body.size() % 4 != 0) {
        body.write(0);
      }
      if (i == names.length - 1) {
        for (String s : shared) {
          entry(table, s, offset, data[i].length);
        }
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    header(out, at + body.size());
    out.writeBytes(table.toByteArray());
    out.writeBytes(body.toByteArray());
    return out.toByteArray();
  }

  private static void header(ByteArrayOutputStream out, int size) {
    int32(out, size);
    int32(out, 0);
    int32(out, 0x04300000);
    ascii(out, "mntrRGB XYZ ");
    // A fixed date of creation: 2026-01-01.
    for (int n : new int[] {2026, 1, 1, 0, 0, 0}) {
      out.write(n >> 8);
      out.write(n);
    }
    ascii(out, "acsp");
    out.writeBytes(new byte[28]);
    for (double v : XYZ[0]) {
      fixed(out, v);
    }
    out.writeBytes(new byte[48]);
  }

  private static void entry(ByteArrayOutputStream out, String name, int offset, int length) {
    ascii(out, name);
    int32(out, offset);
    int32(out, length);
  }

  private static byte[] words(String text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ascii(out, "mluc");
    int32(out, 0);
    int32(out, 1);
    int32(out, 12);
    ascii(out, "enUS");
    int32(out, text.length() * 2);
    int32(out, 28);
    out.writeBytes(text.getBytes(StandardCharsets.UTF_16BE));
    return out.toByteArray();
  }

  private static byte[] numbers(String type, byte[] before, double... values) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ascii(out, type);
    int32(out, 0);
    out.writeBytes(before);
    for (double v : values) {
      fixed(out, v);
    }
    return out.toByteArray();
  }

  private static void fixed(ByteArrayOutputStream out, double value) {
    int32(out, (int) Math.round(value * 65536));
  }

  private static void ascii(ByteArrayOutputStream out, String s) {
    out.writeBytes(s.getBytes(StandardCharsets.US_ASCII));
  }

  private static void int32(ByteArrayOutputStream out, int n) {
    out.write(n >> 24);
    out.write(n >> 16);
    out.write(n >> 8);
    out.write(n);
  }
}

package headcourse.render.png;

import headcourse.text.Face;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** Turns an SVG file of ours into a picture to send by telephone. */
public final class PictureRenderer {
  /** Width of a picture, pixels: sharp on a telephone, and small enough for a message. */
  public static final int WIDTH = 1600;

  private PictureRenderer() {}

  /**
   * A PNG, {@link #WIDTH} pixels wide, on white. Scripts do not run and nothing outside the file is
   * read. The same file gives the same bytes on the same Java; another may smooth edges otherwise.
   *
   * @param svg the file, UTF-8
   * @throws IOException if the picture can't be made, as where Java has no fonts to draw with
   */
  public static byte[] png(byte[] svg) throws IOException {
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) WIDTH);
    transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_EXECUTE_ONLOAD, false);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOWED_SCRIPT_TYPES, "");
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, false);
    ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
    try {
      letterings();
      transcoder.transcode(
          new TranscoderInput(new ByteArrayInputStream(svg)), new TranscoderOutput(out));
    } catch (TranscoderException | FontFormatException | LinkageError | InternalError e) {
      throw new IOException("no picture can be made here: " + e.getMessage(), e);
    }
    return out.toByteArray();
  }

  /** Makes the sheets' own fonts known, so that no other is taken for them. */
  private static void letterings() throws IOException, FontFormatException {
    for (Face face : Face.values()) {
      try (InputStream in = face.open()) {
        GraphicsEnvironment.getLocalGraphicsEnvironment()
            .registerFont(Font.createFont(Font.TRUETYPE_FONT, in));
      }
    }
  }
}

package headcourse.sheet.frame;

import headcourse.diag.Outcome;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * Reads a sheet's frame from an SVG file: an allow-list of elements, nothing that runs or reaches
 * out of the file, limits on size, number and depth.
 */
public final class FrameReader {
  private static final int LARGEST = 512 * 1024;

  private FrameReader() {}

  /**
   * Reads a file.
   *
   * @param name what messages call it
   * @param svg its bytes
   * @return the frame, or every reason for refusing it with its place
   */
  public static Outcome<Frame> read(String name, byte[] svg) {
    if (svg.length > LARGEST) {
      Complaints c = new Complaints(name, "");
      c.error(0, "the frame is larger than 512 KiB", "make the picture in it smaller");
      return Outcome.failed(c.all());
    }
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(svg)).toString();
    } catch (CharacterCodingException e) {
      Complaints c = new Complaints(name, "");
      c.error(0, "the frame is not in UTF-8", "save it as UTF-8");
      return Outcome.failed(c.all());
    }
    if (text.startsWith("\uFEFF")) {
      text = text.substring(1);
    }
    Complaints complaints = new Complaints(name, text);
    Node root = new MarkupReader(text, complaints).read();
    Frame frame =
        root == null || complaints.failed() ? null : new FrameBuilder(complaints).build(root);
    return complaints.failed() || frame == null
        ? Outcome.failed(complaints.all())
        : Outcome.of(frame, complaints.all());
  }
}

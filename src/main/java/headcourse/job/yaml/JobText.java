package headcourse.job.yaml;

import headcourse.diag.Source;
import headcourse.diag.Span;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.Node;

/** The text of a file, with the way from the library's marks to places in it. */
final class JobText {
  /** Larger files are no job. */
  static final int MOST_BYTES = 2 << 20;

  private final Source source;
  private final int[] points;
  private final int[] lineStarts;
  private final int[] lineLengths;

  /** Another file whose nodes are laid under this one's; null where there is none. */
  private JobText beside;

  JobText(String name, String text) {
    source = Source.of(name, text);
    points = text.codePoints().toArray();
    List<Integer> starts = new ArrayList<>(List.of(0));
    for (int i = 0; i < points.length; i++) {
      boolean crlf = points[i] == '\r' && i + 1 < points.length && points[i + 1] == '\n';
      if (points[i] == '\n' || points[i] == '\r' && !crlf) {
        starts.add(i + 1);
      }
    }
    lineStarts = starts.stream().mapToInt(Integer::intValue).toArray();
    // Counted once: a file may be one line with tens of thousands of values.
    lineLengths = source.lines().stream().mapToInt(l -> l.codePointCount(0, l.length())).toArray();
  }

  /** Decodes a file; what can't be text, or is too much, is a problem. */
  static Optional<JobText> decode(String name, byte[] bytes, Problems problems) {
    if (bytes.length > MOST_BYTES) {
      Source none = Source.of(name, "");
      problems.error(
          new Span(none, 1, 1, 1), "the file is larger than 2 MiB; this is much less in a job");
      return Optional.empty();
    }
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    String good = out.flip().toString();
    int bom = good.startsWith("\uFEFF") ? 1 : 0;
    if (result.isError()) {
      JobText lenient = new JobText(name, new String(bytes, StandardCharsets.UTF_8).substring(bom));
      problems.error(
          lenient.at(good.codePointCount(0, good.length()) - bom, 1),
          "a byte that is no UTF-8 text; save the file as UTF-8");
      return Optional.empty();
    }
    JobText text = new JobText(name, good.substring(bom));
    for (int i = 0; i < text.points.length; i++) {
      int c = text.points[i];
      if (c < 0x20 && c != '\n' && c != '\r' && c != '\t' || c == 0x7F || c == 0xFFFE) {
        problems.error(
            text.at(i, 1),
            String.format(
                java.util.Locale.ROOT, "a control character (U+%04X); only text is read", c));
        return Optional.empty();
      }
    }
    return Optional.of(text);
  }

  String text() {
    return new String(points, 0, points.length);
  }

  /** Nodes of another file are laid under this one's: their marks bear its name. */
  void beside(JobText other) {
    beside = other;
  }

  private boolean isBeside(Mark mark) {
    return beside != null && beside.source.name().equals(mark.getName());
  }

  List<String> lines() {
    return source.lines();
  }

  /** A place by its line and column, both from 1. */
  Span onLine(int line, int column, int length) {
    return new Span(source, line, column, Math.max(1, length));
  }

  Span start() {
    return at(0, 1);
  }

  /** The place of a code point and some after it, on one line. */
  Span at(int index, int length) {
    int i = Math.max(0, Math.min(index, points.length));
    int found = Arrays.binarySearch(lineStarts, i);
    int line = found >= 0 ? found : -found - 2;
    int column = i - lineStarts[line];
    int left = lineLengths[line] - column;
    return new Span(source, line + 1, column + 1, Math.max(1, Math.min(length, left)));
  }

  /** The code point at a line and a column, both from 1. */
  int index(int line, int column) {
    return lineStarts[Math.min(line, lineStarts.length) - 1] + column - 1;
  }

  Span of(Mark mark) {
    return mark == null
        ? start()
        : isBeside(mark) ? beside.at(mark.getIndex(), 1) : at(mark.getIndex(), 1);
  }

  Span of(Node node) {
    if (isBeside(node.getStartMark())) {
      return beside.of(node);
    }
    int from = node.getStartMark().getIndex();
    return at(from, node.getEndMark().getIndex() - from);
  }
}

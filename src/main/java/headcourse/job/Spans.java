package headcourse.job;

import headcourse.diag.Span;
import java.util.Map;

/**
 * Where each value of a job stands in its file. A path is keys joined by dots with list positions
 * in brackets, as in {@code openings[0].head.stones.max}.
 *
 * @param byPath the places that the file names
 * @param rewriting reads the file again with other values in it; null for a job that has no file
 */
public record Spans(Map<String, Span> byPath, Rewriting rewriting) {
  /** No places; for jobs made by a program. */
  public static final Spans NONE = new Spans(Map.of());

  /** Places of a job that can't be read again. */
  public Spans(Map<String, Span> byPath) {
    this(byPath, null);
  }

  /** Copies the map. */
  public Spans {
    byPath = Map.copyOf(byPath);
  }

  /** The place of a value, or of the nearest thing around it that the file names, or null. */
  public Span of(String path) {
    String p = path;
    while (true) {
      Span span = byPath.get(p);
      if (span != null || p.isEmpty()) {
        return span;
      }
      int cut = Math.max(p.lastIndexOf('.'), p.lastIndexOf('['));
      p = cut < 0 ? "" : p.substring(0, cut);
    }
  }

  /** Whether the file itself gives this value. */
  public boolean given(String path) {
    return byPath.containsKey(path);
  }
}

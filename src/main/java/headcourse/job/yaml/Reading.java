package headcourse.job.yaml;

import headcourse.diag.Span;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** What all readers of one file share: its text, units, grid, and what was found. */
final class Reading {
  final JobText text;
  final Problems problems;
  final SideFiles files;
  final Map<String, Span> spans = new LinkedHashMap<>();
  private final Set<String> unsound = new HashSet<>();

  /** Notes what is asked, where nothing is read but the readers themselves; else null. */
  final Asked asked;

  /** Makes the table of every key there is; it is made once, and only where one is unknown. */
  Supplier<KeyTable> tableMaker = () -> new KeyTable(Map.of());

  private KeyTable table;

  Units units = Units.INCH;
  Grid grid = new Grid(Length.inches(1 / 16.0));

  /** Where a key belongs that was written in another place, in words; empty where nowhere. */
  List<String> elsewhere(String key) {
    if (table == null) {
      table = tableMaker.get();
    }
    return table.elsewhere(key);
  }

  Reading(JobText text, Problems problems, SideFiles files) {
    this(text, problems, files, null);
  }

  Reading(JobText text, Problems problems, SideFiles files, Asked asked) {
    this.asked = asked;
    this.text = text;
    this.problems = problems;
    this.files = files;
  }

  /** A default in the job's own units, so that it is a round number in both. */
  Length or(double inches, double mm) {
    return units == Units.INCH ? Length.inches(inches) : Length.mm(mm);
  }

  void error(String path, Span span, String message, String... hints) {
    unsound.add(path);
    problems.error(span, message, hints);
  }

  /** An error at a path, where it or what is around it stands. */
  void error(String path, String message, String... hints) {
    error(path, place(path), message, hints);
  }

  Span place(String path) {
    String p = path;
    while (!p.isEmpty() && !spans.containsKey(p)) {
      p = p.substring(0, Math.max(0, Math.max(p.lastIndexOf('.'), p.lastIndexOf('['))));
    }
    return spans.getOrDefault(p, text.start());
  }

  /** Whether none of the values was refused, so that they may be compared. */
  boolean sound(String... paths) {
    for (String p : paths) {
      if (unsound.contains(p)) {
        return false;
      }
    }
    return true;
  }

  /** A length as the job would write it. */
  String say(Length length) {
    Grid fine =
        units == Units.INCH ? new Grid(Length.inches(1 / 512.0)) : new Grid(Length.mm(.001));
    return new LengthFormat(units, fine).plainWithUnit(length);
  }

  /** A piece of the file in a message, shortened. */
  static String quoted(String s) {
    String one = s.replaceAll("\\s+", " ");
    int[] points = one.codePoints().limit(41).toArray();
    return "'"
        + new String(points, 0, Math.min(40, points.length))
        + (points.length > 40 ? "..." : "")
        + "'";
  }
}

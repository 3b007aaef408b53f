package headcourse.choose;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Vary;
import headcourse.layout.Arrangement;
import headcourse.layout.HeadLayout;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * A head that may be chosen.
 *
 * @param combination what is set of that which varies
 * @param arrangement its stones
 */
record Candidate(Combination combination, Arrangement arrangement) {
  /** Everything that must stand beside its letter for the same head to be drawn again. */
  Settings settings() {
    Settings s = combination.settings();
    if (arrangement.byCount()) {
      return s.with("stones.each-side", Integer.toString(arrangement.left().size()));
    }
    String left = widths(arrangement.left());
    String right = widths(arrangement.right());
    return s.with(
        "stones.widths", left.equals(right) ? left : "{left: " + left + ", right: " + right + "}");
  }

  private String widths(List<Length> widths) {
    Job job = combination.job();
    LengthFormat format = new LengthFormat(job.units(), job.grid());
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < widths.size(); ) {
      int end = i;
      while (end < widths.size() && widths.get(end).equals(widths.get(i))) {
        end++;
      }
      String width = format.plain(widths.get(i));
      runs.add(end == i + 1 ? width : end - i + " x " + width);
      i = end;
    }
    return "[" + String.join(", ", runs) + "]";
  }

  /** Whether the tolerances alone may spoil an end. */
  boolean stackUp() {
    if (arrangement.shortfall().isZero()) {
      return false;
    }
    HeadLayout layout = arrangement.head().get();
    Job job = combination.job();
    return Shortfall.of(job, layout, Side.LEFT).most().isPositive()
        || Shortfall.of(job, layout, Side.RIGHT).most().isPositive();
  }

  HeadSpec head() {
    return combination.opening().head();
  }

  /** How far the mean width is off the target, times the number of stones, pm. */
  long off() {
    return arrangement
        .widths()
        .minus(head().stones().target().times(arrangement.stones()))
        .abs()
        .picometres();
  }

  /** The mean width. */
  Length mean() {
    return new Length(
        Math.round((double) arrangement.widths().picometres() / arrangement.stones()));
  }

  /** The key's width over a stone's; 0 without a key. */
  double proportion() {
    return (double) arrangement.key().picometres()
        * arrangement.stones()
        / arrangement.widths().picometres();
  }

  /** By how much that is out of the range that looks right. */
  double outside() {
    Vary vary = combination.opening().choosing().vary();
    double p = proportion();
    return p == 0 ? 0 : Math.max(0, Math.max(vary.least() - p, p - vary.most()));
  }

  /**
   * What tells pictures of them apart: all that varies but the key, number and width of the stones,
   * and the key's width to the nearest inch, or 25 mm.
   */
  List<Object> picture() {
    Settings rest =
        combination.settings().without(k -> k.startsWith("key.") && !k.endsWith("rise"));
    Job job = combination.job();
    Length step = job.units() == Units.INCH ? Length.inches(1) : Length.mm(25);
    return List.of(
        rest,
        arrangement.left().size(),
        arrangement.right().size(),
        mean(),
        new Grid(step).nearest(arrangement.key()));
  }

  /** What makes two of them one and the same head. */
  List<Object> same() {
    Settings rest =
        combination.settings().without(k -> k.equals("key.bottom") || k.equals("key.top"));
    return List.of(
        rest, arrangement.left(), arrangement.right(), arrangement.key(), arrangement.keyTop());
  }
}

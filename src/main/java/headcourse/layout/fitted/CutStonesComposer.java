package headcourse.layout.fitted;

import headcourse.geom.Point;
import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.side.Choice;
import headcourse.layout.side.CutStones;
import headcourse.layout.side.EdgeLine;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.HeadBuilder;
import headcourse.layout.side.Lines;
import headcourse.layout.side.SoffitLine;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts the stones that are there already one after the other from the key outwards, each by its
 * measured widths, and finds the joint lines that follow. A stone whose sizes are those printed for
 * it is as drawn, and stays where it is when nothing nearer the key moved. Of what was not measured
 * the drawing is taken: the key, a stone passed over, a height, the lean of an outer edge.
 */
public final class CutStonesComposer {
  private final FlatTerms terms;
  private final HeadBuilder builder;
  private final SoffitLine underside;
  private final List<Fitted> fitted;
  private final Drawn drawn;
  private final boolean fan;

  /**
   * The head as it would be without fitted stones.
   *
   * @param head it
   * @param left the choice on its left
   * @param right the choice on its right
   */
  public record Drawn(HeadLayout head, Choice left, Choice right) {
    Choice on(Side side) {
      return side == Side.LEFT ? left : right;
    }
  }

  /** For a head whose drawing may be missing (null), where it can't be set out by itself. */
  CutStonesComposer(FlatHead head, List<Fitted> fitted, Drawn drawn) {
    this.terms = head.terms();
    this.builder = new HeadBuilder(terms, head.geometry());
    this.underside = builder.soffit();
    this.fan = head.geometry().fanned();
    this.fitted = fitted;
    this.drawn = drawn;
  }

  /** The measured stone with a mark. */
  private Optional<Fitted> measured(String mark) {
    return fitted.stream().filter(f -> f.stone().equals(mark)).findFirst();
  }

  /** How many stones of a side are there, counting those passed over. */
  static int count(List<Fitted> fitted, Side side) {
    String letter = side == Side.LEFT ? "L" : "R";
    return fitted.stream()
        .filter(f -> f.stone().startsWith(letter))
        .mapToInt(f -> Integer.parseInt(f.stone().substring(1)))
        .max()
        .orElse(0);
  }

  /**
   * Those of a side; null where they can't stand beside each other.
   *
   * @param lines the joint lines of the side as drawn
   * @param whole whether they make up the whole side, so that the last is the end stone
   */
  CutStones compose(Side side, Lines lines, boolean whole) {
    int n = count(fitted, side);
    long tick = terms.tick();
    long[] s = new long[n + 1];
    long[] t = new long[n + 1];
    s[0] = lines.startSoffit() * tick;
    t[0] = lines.startTop() * tick;
    CutStones.Stone key = measured("K").map(f -> key(f, lines, s, t)).orElse(null);
    List<CutStones.Stone> stones = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      CutStones.Stone stone = stone(side, lines, i, whole && i == n, s, t);
      if (stone == null) {
        return null;
      }
      stones.add(stone);
    }
    return new CutStones(key, stones, s, t);
  }

  private static boolean asPrinted(Fitted f, PlacedStone drawn) {
    return f.bottom().equals(drawn.bottom())
        && (f.top() == null || f.top().equals(drawn.top()))
        && (f.height() == null || f.height().equals(drawn.height()));
  }

  private CutStones.Stone key(Fitted f, Lines lines, long[] s, long[] t) {
    PlacedStone asDrawn = builder.key(Choice.whole(lines, null));
    if (asPrinted(f, asDrawn)) {
      return new CutStones.Stone(f, true, 0);
    }
    double half = f.bottom().mm() / 2;
    double lower = terms.drop() == 0 ? underside.y(half) : 0 - terms.mm(terms.drop());
    double upper =
        f.height() == null ? terms.mm(terms.height() + terms.rise()) : lower + f.height().mm();
    Length top = f.top() == null ? f.bottom().plus(asDrawn.top().minus(asDrawn.bottom())) : f.top();
    double slope = (top.mm() / 2 - half) / (upper - lower);
    joint(0, half - slope * lower, slope, false, s, t);
    return new CutStones.Stone(f, false, f.height() == null ? 0 : upper);
  }

  /** Notes a joint whose inner edge crosses the soffit line there and leans so. */
  private void joint(int i, double edge, double slope, boolean end, long[] s, long[] t) {
    double foot = edge + (end ? 0 : EdgeLine.extra(terms, slope));
    s[i] = Length.mm(foot).picometres();
    t[i] = Length.mm(foot + slope * terms.mm(terms.height())).picometres();
  }

  private CutStones.Stone stone(Side side, Lines lines, int i, boolean end, long[] s, long[] t) {
    long tick = terms.tick();
    String mark = (side == Side.LEFT ? "L" : "R") + i;
    Fitted f = measured(mark).orElse(null);
    Choice before = drawn == null || drawn.on(side).count() < i ? null : drawn.on(side);
    PlacedStone asDrawn = before == null ? null : drawn.head().stone(mark);
    if (f == null && asDrawn == null) {
      return null;
    }
    if (before != null
        && before.soffit(i - 1, tick) == s[i - 1]
        && before.top(i - 1, tick) == t[i - 1]
        && (f == null || asPrinted(f, asDrawn))) {
      s[i] = before.soffit(i, tick);
      t[i] = before.top(i, tick);
      return new CutStones.Stone(f, true, 0);
    }
    EdgeLine near = EdgeLine.outer(terms, s[i - 1], t[i - 1]);
    SoffitLine soffit = underside.outwards(side);
    Point inner = soffit.meets(near);
    double bottom = (f == null ? asDrawn.bottom() : f.bottom()).mm();
    Point outer = across(soffit, inner, bottom);
    double upper = terms.mm(terms.height());
    if (f != null && f.height() != null) {
      upper = Math.min(inner.y(), outer.y()) + f.height().mm();
    }
    Length top = f == null ? asDrawn.top() : f.top();
    double slope =
        top == null
            ? lean(lines, i, before != null && before.count() == i, outer.x())
            : (near.x(upper) + top.mm() - outer.x()) / (upper - outer.y());
    joint(i, outer.x() - slope * outer.y(), slope, end, s, t);
    EdgeLine far = end ? EdgeLine.end(terms, s[i], t[i]) : EdgeLine.inner(terms, s[i], t[i]);
    boolean stands = far.foot() > near.foot() && far.head() > near.head();
    boolean high = f != null && f.height() != null;
    return stands && far.x(upper) > near.x(upper)
        ? new CutStones.Stone(f, false, high ? upper : 0)
        : null;
  }

  /** The point of the soffit at a distance from another. */
  private static Point across(SoffitLine soffit, Point from, double width) {
    double x = from.x() + width;
    for (int i = 0; i < 30 && !soffit.level(); i++) {
      double rise = soffit.y(x) - from.y();
      x = from.x() + Math.sqrt(Math.max(0, width * width - rise * rise));
    }
    return new Point(x, soffit.y(x));
  }

  /** How an outer edge leans where nobody measured it. */
  private double lean(Lines lines, int i, boolean end, double x) {
    if (end && !fan) {
      return 0;
    }
    long foot = Math.round(lines.dividing(x / terms.mm(1)));
    return (double) (lines.top(i, foot) - lines.soffit(i, foot)) / terms.height();
  }
}

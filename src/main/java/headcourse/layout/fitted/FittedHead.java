package headcourse.layout.fitted;

import headcourse.diag.Diagnostic;
import headcourse.job.Fitted;
import headcourse.layout.HeadLayout;
import headcourse.layout.HeadLayout.Remark;
import headcourse.layout.Proof;
import headcourse.layout.Side;
import headcourse.layout.fitted.CutStonesComposer.Drawn;
import headcourse.layout.side.Choice;
import headcourse.layout.side.CutStones;
import headcourse.layout.side.End;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.Lines;
import headcourse.layout.side.RestLines;
import headcourse.layout.side.SideCase;
import headcourse.layout.side.SideCheck;
import headcourse.layout.side.StoneExtents;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A head of which some stones are cut already: what is left to be chosen on each side, whoever
 * chooses it, and the head that comes of it.
 */
public final class FittedHead {
  private final FlatHead head;
  private final FlatTerms terms;
  private final List<Fitted> fitted;
  private final Drawn drawn;
  private final CutStonesComposer composer;

  FittedHead(FlatHead head, List<Fitted> fitted, Drawn drawn) {
    this.head = head;
    this.terms = head.terms();
    this.fitted = fitted;
    this.drawn = drawn;
    this.composer = new CutStonesComposer(head, fitted, drawn);
  }

  /**
   * The head with stones that are cut.
   *
   * @param head the head
   * @param fitted stones of the job that are cut; those of other openings don't count
   * @param drawn the head as it was drawn before, or null where it could not be
   * @param left the choice on its left, as it was drawn
   * @param right the choice on its right
   */
  public static FittedHead of(
      FlatHead head, List<Fitted> fitted, HeadLayout drawn, Choice left, Choice right) {
    String mark = head.terms().opening().mark();
    List<Fitted> own = fitted.stream().filter(f -> f.opening().equals(mark)).toList();
    return new FittedHead(head, own, drawn == null ? null : new Drawn(drawn, left, right));
  }

  /** The stones that are cut. */
  public List<Fitted> fitted() {
    return fitted;
  }

  /** What can't be solved around whatever the rest is; the drawing may be missing. */
  public List<Diagnostic> problems() {
    FittedReading reading = new FittedReading(terms.job(), terms.opening());
    List<Diagnostic> all = new ArrayList<>(reading.problems());
    all.addAll(reading.gaps(drawn == null ? null : drawn.head()));
    return all;
  }

  /**
   * What is left of a side whose joints all follow one set of lines.
   *
   * @param terms what it keeps to; {@code each-side} counts what is left
   * @param rest its joint lines and ends from the last stone that is there outwards, or null where
   *     there are none
   * @param check its hard constraints, or null
   * @param whole whether the stones that are there may make up the whole side
   * @param there how many are there, the key aside
   * @param asDrawn whether they, and the key, are just as drawn
   * @param cut the stones that are there, with a stone to follow
   * @param ended the same with the last as the end stone, or null
   * @param all the joint lines of the whole side
   * @param flush whether what follows begins just where it was drawn
   * @param lengths how long the stones of a fan are along their blanks; null where upright
   */
  public record Left(
      FlatTerms terms,
      SideCase rest,
      SideCheck check,
      boolean whole,
      int there,
      boolean asDrawn,
      CutStones cut,
      CutStones ended,
      Lines all,
      boolean flush,
      StoneExtents lengths) {
    /** The side with what was chosen for the rest of it; null for nothing. */
    public Choice with(Choice chosen) {
      return chosen == null ? Choice.whole(all, ended) : chosen.after(cut);
    }

    /** The same ending at some of its ends only, or null where it can't. */
    public Left ending(List<End> only) {
      if (rest == null) {
        return this;
      }
      SideCase less = beyond(rest.lines(), only);
      return less == null && !whole
          ? null
          : new Left(terms, less, check, whole, there, asDrawn, cut, ended, all, flush, lengths);
    }

    /** The length along the arris that a stone which is there takes, ticks, rounded up. */
    public long extent(int index) {
      CutStones of = cut != null ? cut : ended;
      if (lengths != null) {
        return lengths.cut(of, index, rest == null && index == there);
      }
      long outer = Math.max(of.soffit(index), of.top(index));
      long inner = Math.min(of.soffit(index - 1), of.top(index - 1));
      return -Math.floorDiv(inner - outer, terms.tick()) - terms.joint();
    }

    /** The width that a stone which is there takes of its side, on the grid. */
    public long width(int index) {
      CutStones of = cut != null ? cut : ended;
      long run =
          all.onTop() ? of.top(index) - of.top(index - 1) : of.soffit(index) - of.soffit(index - 1);
      return Math.floorDiv(2 * run + terms.tick(), 2 * terms.tick()) - terms.joint();
    }
  }

  /**
   * What is left of a side, or null where the stones that are there can't stand beside each other.
   *
   * @param striking depth of the striking point, mm; NaN for upright stones
   */
  public Left left(Side side, double striking) {
    FlatTerms.SideTerms own = side == Side.LEFT ? terms.left() : terms.right();
    FlatHead alone = head.alone(own);
    List<SideCase> cases = alone.cases(own, striking);
    if (cases.size() != 1) {
      return null;
    }
    SideCase c = cases.get(0);
    int n = CutStonesComposer.count(fitted, side);
    Integer each = terms.stones().eachSide();
    CutStones cut = composer.compose(side, c.lines(), false);
    CutStones ended = n == 0 ? null : composer.compose(side, c.lines(), true);
    boolean whole =
        ended != null
            && (each == null || each == n)
            && stand(alone, c.lines(), ended, n - 1)
            && ends(alone.terms(), own, ended);
    FlatTerms after = alone.terms().after(n);
    SideCase rest = null;
    SideCheck check = null;
    if (cut != null && (each == null || each > n) && stand(alone, c.lines(), cut, n)) {
      RestLines lines = rest(c.lines(), cut);
      rest = beyond(lines, c.ends());
      check = alone.over(after).check(lines);
    }
    if (rest == null && !whole) {
      return null;
    }
    // Its own jamb line is no matter of a stone's length, but the soffit over both is.
    Lines from = rest == null ? c.lines() : rest.lines();
    return new Left(
        after,
        rest,
        check,
        whole,
        n,
        cut != null && cut.asDrawn(),
        cut,
        ended,
        c.lines(),
        cut != null && flush(side, cut),
        head.geometry().fanned() ? head.extents(from, side) : null);
  }

  /** Joint lines with the ends beyond where they begin, or null where there are none. */
  private static SideCase beyond(Lines lines, List<End> ends) {
    List<End> left = ends.stream().filter(e -> e.foot() > lines.start()).toList();
    return left.isEmpty() ? null : new SideCase(lines, left);
  }

  private boolean flush(Side side, CutStones cut) {
    Choice was = drawn == null ? null : drawn.on(side);
    int n = cut.count();
    return was != null
        && n <= was.count()
        && was.soffit(n, terms.tick()) == cut.soffit(n)
        && was.top(n, terms.tick()) == cut.top(n);
  }

  /** The choice as drawn, its first stones known to be there. */
  Choice asDrawn(Choice choice, CutStones cut) {
    int n = cut.count();
    if (n == choice.count()) {
      return Choice.whole(choice.lines(), cut);
    }
    long[] feet = Arrays.copyOfRange(choice.feet(), n, choice.feet().length);
    return new Choice(rest(choice.lines(), cut), choice.end(), feet, cut);
  }

  /** The side just as it was drawn, its first stones known to be there. */
  public Choice asDrawn(Side side) {
    Choice choice = drawn.on(side);
    return asDrawn(choice, composer.compose(side, choice.lines(), false));
  }

  RestLines rest(Lines lines, CutStones cut) {
    int n = cut.count();
    double previous = Double.NaN;
    if (n > 0) {
      long run = lines.onTop() ? cut.top(n) - cut.top(n - 1) : cut.soffit(n) - cut.soffit(n - 1);
      previous = (double) run / terms.tick() - terms.joint();
    }
    return new RestLines(
        lines, n, terms.tick(), cut.soffit(n), cut.top(n), lines.onTop(), previous, cut.measured());
  }

  /** Whether the joint lines up to one keep clear of the jamb line. */
  boolean stand(FlatHead h, Lines lines, CutStones cut, int last) {
    SideCheck check = h.check(lines);
    double tick = terms.tick();
    return IntStream.rangeClosed(0, last)
        .allMatch(i -> check.stands(cut.soffit(i) / tick, cut.top(i) / tick));
  }

  /** Whether a side made up of stones that are there ends as it must. */
  boolean ends(FlatTerms own, FlatTerms.SideTerms side, CutStones cut) {
    boolean fan = head.geometry().fanned();
    long foot = cut.soffit(cut.count());
    long top = cut.top(cut.count());
    long inmost = fan ? foot : Math.min(foot, top);
    boolean springs = fan && foot >= own.far() && foot - own.near() < own.tick();
    return foot - own.far() >= own.bearing().min().picometres()
        && foot - own.near() <= own.bearing().max().picometres()
        && Math.max(foot, top) - own.near() <= side.wall()
        && (springs || inmost - own.far() >= own.head().clear().picometres());
  }

  /** The head with both its sides, and what differs from the drawing. */
  HeadLayout build(Choice left, Choice right, Proof proof) {
    return build(left, right, proof, List.of(), drawn == null ? null : drawn.head());
  }

  /**
   * The head with both its sides.
   *
   * @param before the head whose differences from this one are to be listed, or null
   */
  public HeadLayout build(
      Choice left, Choice right, Proof proof, List<Remark> more, HeadLayout before) {
    List<Remark> all = new ArrayList<>(more);
    if (drawn != null) {
      all.addAll(remarks());
    }
    HeadLayout bare = head.build(left, right, proof, List.of());
    return before == null
        ? head.build(left, right, proof, all)
        : head.build(left, right, proof, all, StoneChanges.between(before, bare));
  }

  /** The head itself. */
  public FlatHead head() {
    return head;
  }

  /** What was passed over and is taken as drawn. */
  private List<Remark> remarks() {
    List<String> passed = new ArrayList<>();
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      for (int i = 1; i <= CutStonesComposer.count(fitted, side); i++) {
        String mark = (side == Side.LEFT ? "L" : "R") + i;
        if (fitted.stream().noneMatch(f -> f.stone().equals(mark))) {
          passed.add(mark);
        }
      }
    }
    String all = String.join(", ", passed);
    return passed.isEmpty()
        ? List.of()
        : List.of(
            new Remark(
                "as-drawn",
                all
                    + (passed.size() == 1 ? " was" : " were")
                    + " not measured, but a stone beyond was; taken as drawn",
                List.of(all)));
  }
}

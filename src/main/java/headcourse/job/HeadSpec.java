package headcourse.job;

import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Units;
import java.util.List;
import java.util.Locale;

/**
 * What the job asks of a head.
 *
 * @param shape the name of its shape
 * @param height height of the ordinary stones; depth of the ring for curved heads
 * @param key the key, or null for a head without one
 * @param stones the ordinary stones
 * @param bearing how far the end stones pass the jambs
 * @param clear least distance of a joint from the jamb line
 * @param soffit what covers the soffit
 * @param seat how much of the end stone's return stays on the jamb stone
 * @param params what only this shape asks for
 */
public record HeadSpec(
    String shape,
    Length height,
    Key key,
    Stones stones,
    Bearing bearing,
    Length clear,
    Soffit soffit,
    Length seat,
    Params params) {

  /** The same with another key. */
  public HeadSpec with(Key other) {
    return new HeadSpec(shape, height, other, stones, bearing, clear, soffit, seat, params);
  }

  /** The same of another height. */
  public HeadSpec withHeight(Length other) {
    return new HeadSpec(shape, other, key, stones, bearing, clear, soffit, seat, params);
  }

  /** The same with other stones. */
  public HeadSpec with(Stones others) {
    return new HeadSpec(shape, height, key, others, bearing, clear, soffit, seat, params);
  }

  /**
   * The stone on the centre line.
   *
   * @param bottom width at its lower end, or null where left open
   * @param top width at its upper end, or null where left open
   * @param rise how far it stands above the top line
   * @param drop how far it hangs below the soffit line
   * @param proud how far it stands out from the face
   */
  public record Key(Length bottom, Length top, Length rise, Length drop, Length proud) {
    /** The same with other widths, or with null for one that is left to the other. */
    public Key with(Length lower, Length upper) {
      return new Key(lower, upper, rise, drop, proud);
    }

    /**
     * With both widths, as in a soldier head: 8 in at the bottom and 10 at the top (200 and 250
     * mm); where one is given, the other differs by the same 2 in (50 mm).
     */
    public Key upright(Units units, Grid grid) {
      boolean inches = units == Units.INCH;
      Length taper = grid.snap(inches ? Length.inches(2) : Length.mm(50));
      Length low = bottom;
      if (low == null && top == null) {
        low = grid.snap(inches ? Length.inches(8) : Length.mm(200));
      } else if (low == null) {
        low = top.minus(taper).isPositive() ? top.minus(taper) : top;
      }
      return with(low, top == null ? low.plus(taper) : top);
    }
  }

  /**
   * The ordinary stones.
   *
   * @param min least width
   * @param max greatest width
   * @param target width to aim at
   * @param step for {@code graded} what each stone is narrower than the one nearer the key; for
   *     {@code mixed} the least difference between neighbours
   * @param jump greatest difference between neighbours, or null
   * @param eachSide how many a side, or null where the program chooses
   * @param rhythm how widths run
   * @param mirror whether both sides are alike
   * @param seed what decides among equals; by default from the opening's mark
   * @param prefer what leads where stones are even or graded
   * @param give in {@code from-stock}, how much may be sawn off a head beyond the least and still
   *     count as the least
   * @param widths the width of every stone of a flat head, where the job gives them; else null
   */
  public record Stones(
      Length min,
      Length max,
      Length target,
      Length step,
      Length jump,
      Integer eachSide,
      Rhythm rhythm,
      boolean mirror,
      long seed,
      Prefer prefer,
      Length give,
      Widths widths) {
    /** The same aiming at another width. */
    public Stones withTarget(Length other) {
      return new Stones(
          min, max, other, step, jump, eachSide, rhythm, mirror, seed, prefer, give, widths);
    }

    /** The same with a number a side. */
    public Stones withEachSide(Integer number) {
      return new Stones(
          min, max, target, step, jump, number, rhythm, mirror, seed, prefer, give, widths);
    }

    /** So many a side, all alike. */
    public Stones divided(int number) {
      return new Stones(
          min, max, target, step, jump, number, Rhythm.EVEN, mirror, seed, prefer, give, null);
    }
  }

  /**
   * The widths of all stones, from the key outwards, on the line that widths are counted on.
   *
   * @param left those of the left side
   * @param right those of the right side
   */
  public record Widths(List<Length> left, List<Length> right) {
    /** Copies the lists. */
    public Widths {
      left = List.copyOf(left);
      right = List.copyOf(right);
    }

    /** Whether both sides are alike. */
    public boolean alike() {
      return left.equals(right);
    }
  }

  /**
   * How far the end stones pass the jambs.
   *
   * @param min least
   * @param max greatest
   * @param target to aim at
   */
  public record Bearing(Length min, Length max, Length target) {}

  /** What a head's width follows among those that land and can be cut. */
  public enum Prefer {
    /** The width aimed at. */
    TARGET,
    /** As few blanks as may be, then the width aimed at. */
    BLANKS;

    /** The word in the job file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** How widths run along a side. */
  public enum Rhythm {
    /** All equal. */
    EVEN,
    /** Narrower outwards by a constant step. */
    GRADED,
    /** As picked stone varies. */
    MIXED,
    /** As the yard's pieces are. */
    FROM_STOCK;

    /** The word in the job file. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  /** What covers the soffit. */
  public enum Soffit {
    /** Corner blanks. */
    RETURNED,
    /** Two flats joined at 45° along the arris. */
    MITRED,
    /** Two flats, one behind the other. */
    BUTTED,
    /** Nothing. */
    NONE;

    /** The word in the job file. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }
}

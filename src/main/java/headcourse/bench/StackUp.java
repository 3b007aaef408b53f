package headcourse.bench;

import headcourse.layout.Bearing;
import headcourse.layout.Drift;
import headcourse.layout.Shortfall;
import headcourse.layout.Side;
import headcourse.units.Grid;
import headcourse.units.Length;

/**
 * Where one end may land.
 *
 * @param side which side
 * @param stones how many stones lie between the centre line and the end, the key's half as one
 * @param drift how far the end may be off
 * @param bearing how far it passes the jamb as drawn
 * @param shortfall what is wanting of spare at the worst
 */
public record StackUp(Side side, int stones, Drift drift, Length bearing, Shortfall shortfall) {
  /** Bearing at the worst. */
  public Length bearingLeast() {
    return bearing.minus(drift.inward());
  }

  /** Bearing at the other worst. */
  public Length bearingGreatest() {
    return bearing.plus(drift.outward());
  }

  /** Whether every joint stays clear of the jamb line at the worst. */
  public boolean jambStillClear() {
    return shortfall.jamb().isZero();
  }

  /**
   * As printed: the bearing as everywhere, the rest rounded towards safety, so that the least is
   * never less than it says and the greatest never more, and the parts make up the sums.
   *
   * @param bearing as drawn
   * @param inward may be short of it by so much
   * @param outward may be over it by so much
   */
  public record Printed(Length bearing, Length inward, Length outward) {
    /** Bearing at the worst. */
    public Length least() {
      return bearing.minus(inward);
    }

    /** Bearing at the other worst. */
    public Length greatest() {
      return bearing.plus(outward);
    }
  }

  /** The figures on a grid. */
  public Printed on(Grid grid) {
    Length drawn = Bearing.printed(bearing, grid);
    return new Printed(
        drawn,
        drawn.minus(grid.ticks(grid.floor(bearingLeast()))),
        grid.ticks(grid.ceil(bearingGreatest())).minus(drawn));
  }
}

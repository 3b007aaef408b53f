package headcourse.sheet.section;

import headcourse.job.Backing;
import headcourse.job.Wall;
import java.util.ArrayList;
import java.util.List;

/** What stands behind a head, height by height, as a section through it shows. */
public final class BackingBands {
  private BackingBands() {}

  /**
   * A band.
   *
   * @param from lower end, mm above the section's soffit
   * @param to upper end
   * @param what what stands there
   */
  public record Band(double from, double to, Backing what) {
    /** Its middle. */
    public double middle() {
      return (from + to) / 2;
    }
  }

  /** Whether the job says anything of it. */
  public static boolean said(Wall wall) {
    Backing first = wall.backing().get(0);
    boolean usual = first.to() == null && first.name().isEmpty();
    return !usual || first.kind() != Backing.Kind.WOOD;
  }

  /**
   * The bands within bounds, from below.
   *
   * @param soffit height of the section's soffit above the soffit line, mm
   * @param low lower bound, mm above the section's soffit
   * @param high upper bound
   */
  public static List<Band> of(Wall wall, double soffit, double low, double high) {
    List<Band> bands = new ArrayList<>();
    double from = low;
    for (Backing b : wall.backing()) {
      double to = b.to() == null ? high : Math.min(high, b.to().mm() - soffit);
      if (to > from) {
        bands.add(new Band(from, to, b));
        from = to;
      }
    }
    if (from < high) {
      bands.add(new Band(from, high, Backing.UNKNOWN));
    }
    return bands;
  }
}

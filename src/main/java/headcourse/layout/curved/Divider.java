package headcourse.layout.curved;

import headcourse.job.HeadSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * Divides half a soffit into a number of stones, equal along the curve, or growing by a constant
 * step from the crown to the springing. A key whose width is left open is one of them.
 *
 * @param intrados the soffit
 * @param joint width of a joint
 * @param keyHalf how far the key's joint stands from the crown; 0 for no key, NaN for a key that is
 *     like the other stones
 * @param step how much longer each stone is than the one nearer the crown; 0 for equal stones
 */
record Divider(Intrados intrados, double joint, double keyHalf, double step) {
  /**
   * A divider for what the job asks.
   *
   * @param keyHalf as above
   */
  static Divider of(CurvedSpec given, Intrados intrados, double keyHalf) {
    HeadSpec.Stones stones = given.head().stones();
    double step = stones.rhythm() == HeadSpec.Rhythm.GRADED ? stones.step().mm() : 0;
    return new Divider(intrados, given.joint(), keyHalf, step);
  }

  private boolean keyless() {
    return keyHalf == 0;
  }

  /** About how many stones of a width a side holds. */
  double guess(double width) {
    double half = Double.isNaN(keyHalf) ? width / 2 : keyHalf;
    return Math.rint((intrados.length() - half) / (width + joint));
  }

  /** So many stones a side, or null where the curve is too short for them. */
  Division divide(int n) {
    double length = intrados.length();
    double half = keyHalf;
    double mean = (length - keyHalf) / n;
    if (Double.isNaN(keyHalf)) {
      // The key is stone 0 of the row, and only half of it lies on this side.
      mean = (length + step * (n + 1) / 4) / (n + 0.5);
      half = (mean - step * (n + 1) / 2) / 2;
      if (2 * half <= joint) {
        return null;
      }
    }
    double first = mean - step * (n - 1) / 2;
    if (Math.min(first, first + step * (n - 1)) <= joint) {
      return null;
    }
    List<CutLine> lines = new ArrayList<>();
    lines.add(
        keyless()
            ? new CutLine(intrados.at(0), CutLine.CENTRE.along(), 0, 0)
            : intrados.joint(half, 0));
    double s = half;
    for (int i = 1; i <= n; i++) {
      s = i == n ? length : s + first + step * (i - 1);
      lines.add(intrados.joint(s, i));
    }
    return new Division(intrados, joint, lines, !keyless());
  }
}

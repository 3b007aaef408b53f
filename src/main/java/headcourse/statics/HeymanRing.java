package headcourse.statics;

import headcourse.geom.Arc;
import headcourse.geom.Edge;
import headcourse.layout.HeadLayout;
import java.util.List;
import java.util.Optional;

/**
 * The thinnest circular arch that stands by Heyman's simplification (The Masonry Arch, from
 * memory): as many joints as anyone likes, its own weight alone, acting along its middle line, and
 * the line of thrust running along the soffit where it touches it. A figure to hold the blocks of a
 * head against: it leaves out what radial joints ask for, some 1.4 % of a semicircle's depth.
 *
 * @param ratio depth over the radius of the middle line
 * @param hinge angle from the crown at which the thrust touches the soffit, radians
 */
public record HeymanRing(double ratio, double hinge) {
  private static final int ROUNDS = 60;

  /**
   * The ring of an angle.
   *
   * @param half angle from the crown to the springing, radians, over 0, at most π/2
   */
  public static HeymanRing of(double half) {
    double low = 0;
    double high = half;
    for (int i = 0; i < ROUNDS; i++) {
      double mid = (low + high) / 2;
      boolean more = atHinge(mid) < atSpringing(mid, half);
      low = more ? mid : low;
      high = more ? high : mid;
    }
    return new HeymanRing(2 * atHinge(low), low);
  }

  /** The least depth of a head struck from one centre, mm; none where it is not. */
  public static Optional<Double> leastDepth(HeadLayout head) {
    List<Edge> soffit = head.curve() == null ? List.of() : head.curve().intrados().edges();
    if (soffit.isEmpty() || !soffit.stream().allMatch(e -> e instanceof Arc)) {
      return Optional.empty();
    }
    Arc first = (Arc) soffit.get(0);
    double sweep = 0;
    for (Edge e : soffit) {
      Arc arc = (Arc) e;
      if (arc.centre().distance(first.centre()) > 1e-6) {
        return Optional.empty();
      }
      sweep += Math.abs(arc.sweep());
    }
    double ratio = of(sweep / 2).ratio;
    return Optional.of(ratio * first.radius() / (1 - ratio / 2));
  }

  /** {@code 1 − cos β}, which a flat arc would otherwise lose among its last digits. */
  private static double low(double beta) {
    double s = Math.sin(beta / 2);
    return 2 * s * s;
  }

  /** The thrust that runs along the soffit at β is β cot β of weight times radius. */
  private static double thrust(double beta) {
    return beta == 0 ? 1 : beta / Math.tan(beta);
  }

  /**
   * Half the ratio, k, for which that thrust at the back of the crown turns what lies above β about
   * the soffit there as much as its weight does: {@code H (1 + k − (1 − k) cos β) = β (1 − k) sin β
   * − (1 − cos β)}.
   */
  private static double atHinge(double beta) {
    double h = thrust(beta);
    double low = low(beta);
    double s = Math.sin(beta);
    return (beta * s - (1 + h) * low) / (h * (2 - low) + beta * s);
  }

  /**
   * The same for the whole half about the back at the springing, α: {@code H (1 + k)(1 − cos α) = α
   * (1 + k) sin α − (1 − cos α)}.
   */
  private static double atSpringing(double beta, double alpha) {
    double low = low(alpha);
    return low / (alpha * Math.sin(alpha) - thrust(beta) * low) - 1;
  }
}

package headcourse.statics;

import headcourse.geom.Point;
import headcourse.job.Job;
import headcourse.layout.HeadLayout;
import java.util.List;

/**
 * What a head would do if it were solid, between walls that do not give way. An appearance check:
 * the veneer carries nothing, and this is no structural design.
 *
 * @param verdict whether it would stand
 * @param friction coefficient of friction that was assumed
 * @param most greatest thrust allowed, times what it weighs
 * @param weight of the head and the wall on it, mm² of face
 * @param thrust least thrust that keeps it up, times what it weighs; null where none does
 * @param greatest greatest thrust that it bears, times what it weighs; infinite where any, null
 *     where none
 * @param depth of its ordinary stones, mm
 * @param least least depth at which it would stand with the thrust allowed, mm, the soffit where it
 *     is; null where no depth helps
 * @param yields what gives way first: at the least depth, or as drawn where it does not stand; the
 *     weightiest first
 * @param pushes whether the greatest thrust allowed takes part in that: the walls give way
 * @param line where the force of the least thrust crosses seats and joints, from left to right;
 *     empty where it does not stand
 * @param joints from left to right
 */
public record Standing(
    Verdict verdict,
    double friction,
    double most,
    double weight,
    Double thrust,
    Double greatest,
    double depth,
    Double least,
    List<Yield> yields,
    boolean pushes,
    List<Point> line,
    List<Joint> joints) {
  private static final double MM3_PER_M3 = 1e9;

  /** Copies the lists. */
  public Standing {
    yields = List.copyOf(yields);
    line = List.copyOf(line);
    joints = List.copyOf(joints);
  }

  /** Whether a solid head would stand. */
  public enum Verdict {
    /** It would, with no more thrust than is allowed. */
    STANDS,
    /** Only with more thrust. */
    PUSHES,
    /** Not at all. */
    FALLS;

    /** The word in output. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Depth over least depth: over 1 where it stands with the thrust allowed. */
  public Double margin() {
    return least == null ? null : depth / least;
  }

  /**
   * What it weighs with the wall on it if it is as thick as the opening's reveal is deep, which is
   * how thick the soffit makes it look, kg.
   */
  public double weightKg(Job job, HeadLayout head) {
    return weight * head.opening().reveal().mm() / MM3_PER_M3 * job.stone().density();
  }

  /**
   * How wide a pier of the same stone would have to be that stands by itself, as thick as the head
   * and of any height, mm; null where nothing stands.
   *
   * <p>Its own weight must keep it from tipping: {@code T h ≤ (b h) b / 2} with the thrust T acting
   * at its top, so {@code b = √(2T)}; T in mm² of face. Half the head's weight, which helps, is
   * left out.
   */
  public Double pier() {
    return thrust == null ? null : Math.sqrt(2 * thrust * weight);
  }
}

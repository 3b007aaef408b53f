package headcourse.statics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A row of rigid blocks between two walls that do not give way.
 *
 * @param joints from left to right, both ends included
 * @param loads what weighs on each block; one fewer than joints
 * @param left where the first blocks lie on the jamb, from the first on; none where they do not
 * @param right where the last ones do, from the last on
 * @param friction coefficient of friction of every joint and seat, over 0
 */
public record Blocks(
    List<Joint> joints, List<Load> loads, List<Seat> left, List<Seat> right, double friction) {
  private static final double CLOSE = 1e-6;

  /** Copies the lists; refuses what is no row of blocks. */
  public Blocks {
    joints = List.copyOf(joints);
    loads = List.copyOf(loads);
    left = List.copyOf(left);
    right = List.copyOf(right);
    if (loads.isEmpty() || joints.size() != loads.size() + 1 || !(friction > 0)) {
      throw new IllegalArgumentException(
          joints.size() + " joints, " + loads.size() + " blocks, friction " + friction);
    }
  }

  /** Blocks that touch the walls at their end joints alone. */
  public Blocks(List<Joint> joints, List<Load> loads, double friction) {
    this(joints, loads, List.of(), List.of(), friction);
  }

  /** What all of it weighs, mm² of face. */
  public double weight() {
    return loads.stream().mapToDouble(Load::weight).sum();
  }

  /** Whether it is its own mirror image, but for what rounding leaves. */
  boolean even() {
    Blocks other = mirrored();
    double loads = weight() * CLOSE;
    for (int i = 0; i < this.loads.size(); i++) {
      Load a = this.loads.get(i);
      Load b = other.loads.get(i);
      if (Math.abs(a.weight() - b.weight()) > loads
          || Math.abs(a.x() - b.x()) * a.weight() > loads) {
        return false;
      }
    }
    for (int i = 0; i < joints.size(); i++) {
      Joint a = joints.get(i);
      Joint b = other.joints.get(i);
      double off = a.length() * CLOSE;
      if (a.foot().distance(b.foot()) > off || a.head().distance(b.head()) > off) {
        return false;
      }
    }
    return left.size() == right.size();
  }

  /** The mirror image. */
  public Blocks mirrored() {
    List<Joint> js = new ArrayList<>(joints.stream().map(Joint::mirrored).toList());
    List<Load> ls = new ArrayList<>(loads.stream().map(Load::mirrored).toList());
    Collections.reverse(js);
    Collections.reverse(ls);
    return new Blocks(
        js,
        ls,
        right.stream().map(Seat::mirrored).toList(),
        left.stream().map(Seat::mirrored).toList(),
        friction);
  }
}

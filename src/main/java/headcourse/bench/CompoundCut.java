package headcourse.bench;

import headcourse.units.Angle;

/**
 * How the saw stands for a plane cut through a piece that lies flat.
 *
 * @param mitre fence off square, never negative
 * @param tilt blade off plumb, never negative
 */
record CompoundCut(Angle mitre, Angle tilt) {
  /** Less than this is nothing, radians; a picometre over a kilometre. */
  private static final double NOTHING = 1e-12;

  /**
   * From plane normals in the piece's own frame. With unit normals c of the cut and f of the face
   * that lies on the table, {@code sin tilt = |c·f|}; the cut's trace on the table {@code r = c ×
   * f} stands off square to the fence e by {@code tan mitre = |r·e| / |r·(f × e)|} (elementary
   * geometry).
   *
   * @param cut normal of the cut
   * @param face normal of the face on the table
   * @param fence direction that lies along the fence, square to {@code face}
   */
  static CompoundCut of(Direction cut, Direction face, Direction fence) {
    Direction trace = cut.cross(face);
    double sin = Math.abs(cut.dot(face)) / cut.length() / face.length();
    double cos = trace.length() / cut.length() / face.length();
    double off = Math.abs(trace.dot(fence)) / fence.length();
    double square = Math.abs(trace.dot(face.cross(fence))) / fence.length() / face.length();
    return new CompoundCut(angle(off, square), angle(sin, cos));
  }

  private static Angle angle(double opposite, double adjacent) {
    double radians = Math.atan2(opposite, adjacent);
    return radians < NOTHING ? Angle.ZERO : new Angle(radians);
  }
}

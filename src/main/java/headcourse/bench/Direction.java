package headcourse.bench;

/** A direction in space, in a piece's own frame; of any length but nothing. */
record Direction(double x, double y, double z) {
  Direction cross(Direction o) {
    return new Direction(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  double dot(Direction o) {
    return x * o.x + y * o.y + z * o.z;
  }

  double length() {
    return Math.sqrt(dot(this));
  }
}

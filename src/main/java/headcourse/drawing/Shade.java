package headcourse.drawing;

/** How an area is filled. Greys are no darker than 15 %. */
public enum Shade {
  /** Paper white, to cover what is under it. */
  WHITE(1.0),
  /** Stone. */
  STONE(0.96),
  /** The key, and what is cut through. */
  KEY(0.90),
  /** Solid black: arrow heads and bar ends only. */
  BLACK(0.0);

  private final double grey;

  Shade(double grey) {
    this.grey = grey;
  }

  /** 0 black … 1 white. */
  public double grey() {
    return grey;
  }
}

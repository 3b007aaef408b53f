package headcourse.geom;

/** The tolerances of the project, each with its reason. Millimetres unless said. */
public final class Tolerance {
  private Tolerance() {}

  /** Two places closer than this are one: a thousandth of the finest thing a saw can do. */
  public static final double SAME = 1e-6;

  /** Curves written as vertices stay this close to the true curve; the promise of layout.json. */
  public static final double VERTEX = 0.05;

  /** Curves on paper flattened for collision tests; a tenth of the thinnest line. */
  public static final double PAPER = 0.02;
}

package headcourse.layout.side;

/**
 * Joints that all point at one striking point on the centre line.
 *
 * @param startSoffit half key on the soffit line
 * @param startTop half key on the top line
 * @param onTop whether widths are counted on the top line, else on the soffit line
 * @param joint width of a joint
 * @param growth how much wider everything is on the top line: (depth of the point + height) / depth
 * @param striking depth of the point below the soffit line, mm
 */
record FanLines(
    long startSoffit, long startTop, boolean onTop, long joint, double growth, double striking)
    implements Lines {

  /**
   * The tick nearest to a place that is never left of the centre line by more than half a joint.
   */
  static long nearest(double ticks) {
    // Asked for every joint that may be; quicker than Math.floor where that is not compiled away.
    double up = ticks + 0.5;
    long cut = (long) up;
    return cut > up ? cut - 1 : cut;
  }

  @Override
  public long start() {
    return onTop ? startTop : startSoffit;
  }

  @Override
  public long soffit(int index, long foot) {
    return onTop ? nearest((foot + joint / 2.0) / growth - joint / 2.0) : foot;
  }

  @Override
  public long top(int index, long foot) {
    return onTop ? foot : nearest((foot + joint / 2.0) * growth - joint / 2.0);
  }

  @Override
  public double dividing(double soffit) {
    return onTop ? (soffit + joint / 2.0) * growth - joint / 2.0 : soffit;
  }

  @Override
  public int regularFrom() {
    return 1;
  }
}

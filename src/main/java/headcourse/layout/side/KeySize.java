package headcourse.layout.side;

import headcourse.job.HeadSpec;

/**
 * Half the key where its joint crosses the soffit line and the top line, in ticks. A head without a
 * key has its joint on the centre line, so half a joint less than nothing.
 *
 * @param soffit on the soffit line
 * @param top on the top line
 */
public record KeySize(long soffit, long top) {
  /** The key of an upright head: straight between its two ends, snapped on both lines. */
  public static KeySize upright(FlatTerms terms, HeadSpec.Key key) {
    if (key == null) {
      return none(terms);
    }
    long all = terms.drop() + terms.height() + terms.rise();
    long bottom = key.bottom().picometres();
    long top = key.top().picometres();
    return new KeySize(
        part(bottom, top, terms.drop(), all, terms.tick()),
        part(bottom, top, terms.drop() + terms.height(), all, terms.tick()));
  }

  static KeySize none(FlatTerms terms) {
    return new KeySize(-terms.joint() / 2, -terms.joint() / 2);
  }

  /** Half of the width at a height {@code up} of {@code all}, to the nearest tick. */
  private static long part(long bottom, long top, long up, long all, long tick) {
    long twice = Math.addExact(Math.multiplyExact(bottom, all - up), Math.multiplyExact(top, up));
    long den = 2 * all * tick;
    return Math.floorDiv(2 * twice + den, 2 * den);
  }
}

package headcourse.stock;

import headcourse.job.Opening;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatTerms;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSearch;
import headcourse.stock.pile.PileSide;

/**
 * A key that an upright head may have.
 *
 * @param opening the opening with that key
 * @param head the head as read for it
 * @param left its left side
 * @param right its right side
 * @param width how wide the key is at its widest, ticks; 0 where there is none
 * @param from how long a piece it takes at least, ticks
 * @param open whether the job leaves its width open
 * @param sawn the least that is sawn off its pieces, for all copies
 */
record UprightKey(
    Opening opening,
    FlatHead head,
    FlatSide left,
    FlatSide right,
    long width,
    long from,
    boolean open,
    long sawn) {
  /** The head with sides as given. */
  Pile.Head head(PileSide l, PileSide r) {
    FlatTerms terms = head.terms();
    Integer each = terms.stones().eachSide();
    return new Pile.Head(
        opening.count(),
        terms.stones().mirror(),
        each == null ? 0 : each,
        terms.min(),
        terms.max(),
        terms.jump(),
        l,
        r);
  }

  /** The least that the bearings are off, pm. */
  long leastOff() {
    return opening.count() * (PileSearch.leastOff(left) + PileSearch.leastOff(right));
  }
}

package headcourse.stock.pile;

/**
 * Looks for choices in which nothing is sawn off and every stone has a partner, at each difference
 * of the sides from the least possible on; the first that comes out is proved best when all below
 * it were looked at. Only where the two sides of a head are under the same rules is pairing by
 * length sure to be best; elsewhere what is found is no more than a good choice.
 */
final class WholePairs {
  private final Pile pile;
  private final PileTypes types;
  private final long limit;
  private long most = Long.MAX_VALUE;
  private PileDraft best;
  private boolean proved;
  private long steps;

  /**
   * @param limit how many steps it may take
   */
  WholePairs(Pile pile, PileTypes types, long limit) {
    this.pile = pile;
    this.types = types;
    this.limit = limit;
  }

  /** Only sides that differ by no more than this are looked for. */
  WholePairs within(long imbalance) {
    most = imbalance;
    return this;
  }

  void run() {
    if (pile.heads().stream().noneMatch(Pile.Head::mirror)) {
      return;
    }
    WholeSweep sweep = new WholeSweep(pile, types);
    // A stone without a partner counts whole.
    long lone = pile.heads().stream().mapToLong(Pile.Head::min).min().orElse(0);
    boolean sure = true;
    // A level that is cut off leaves the proof open; the next may still hold a good choice.
    for (long cap = sweep.leastImbalance();
        cap < lone && cap <= most && sweep.best() == null;
        cap++) {
      long rest = limit - sweep.steps();
      if (rest <= 0) {
        sure = false;
        break;
      }
      sweep.run(cap, Math.min(rest, limit / 6), false);
      if (!sweep.sure()) {
        // With a choice in hand this is the level that matters.
        rest = limit - sweep.steps();
        sweep.run(cap, sweep.best() == null ? Math.min(rest, limit / 6) : rest, true);
      }
      sure &= sweep.sure();
    }
    best = sweep.best();
    steps = sweep.steps();
    boolean copies = pile.heads().stream().anyMatch(h -> h.copies() > 1);
    boolean alike = pile.heads().stream().allMatch(h -> h.left().equals(h.right()));
    proved = best != null && sure && alike && !(copies && types.twins());
  }

  PileDraft best() {
    return best;
  }

  /** Whether no choice is better. */
  boolean proved() {
    return proved;
  }

  long steps() {
    return steps;
  }
}

package headcourse.stock;

import headcourse.stock.PileDraft.Slot;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks for choices of which only the last stone of a side is sawn down, by given lengths: those of
 * whole pieces that reach so far beyond the end.
 */
final class SawnSearch {
  private static final int SPLITS = 24;

  private final Pile pile;
  private final PileTypes types;
  private final SawBound bound;
  private final long limit;
  private PileDraft best;
  private long steps;
  private int splits;

  /**
   * @param best the best known, or null
   * @param limit how many steps it may take
   */
  SawnSearch(Pile pile, PileTypes types, SawBound bound, PileDraft best, long limit) {
    this.pile = pile;
    this.types = types;
    this.bound = bound;
    this.best = best;
    this.limit = limit;
  }

  PileDraft best() {
    return best;
  }

  long steps() {
    return steps;
  }

  /** Looks at choices of which so much is sawn off in all. */
  void find(long sawn) {
    splits = 0;
    split(0, sawn, new long[2 * pile.heads().size()]);
  }

  private boolean done(long sawn) {
    return steps > limit
        || best != null && best.cost().compareTo(new Pile.Cost(sawn, 0, bound.bearing(sawn))) <= 0;
  }

  /** Gives each side what it saws off, from the {@code i}th on; both alike first. */
  private void split(int i, long sawn, long[] off) {
    if (i == off.length) {
      if (used(off) == sawn && splits++ < SPLITS) {
        look(sawn, off.clone());
      }
      return;
    }
    int c = pile.heads().get(i / 2).copies();
    long ahead = 0;
    for (int k = i + 1; k < off.length; k++) {
      ahead += pile.heads().get(k / 2).copies() * bound.least(k / 2, k % 2);
    }
    long before = 0;
    for (int k = 0; k < i; k++) {
      before += pile.heads().get(k / 2).copies() * off[k];
    }
    long least = bound.least(i / 2, i % 2);
    long most = (sawn - before - ahead) / c;
    long first = Math.min(most, Math.max(least, i % 2 == 1 ? off[i - 1] : (most + least) / 2));
    for (long d = 0; d <= most - least && splits < SPLITS && !done(sawn); d++) {
      for (int sign = -1; sign <= (d == 0 ? -1 : 1); sign += 2) {
        off[i] = first + sign * d;
        if (off[i] >= least && off[i] <= most) {
          split(i + 1, sawn, off);
        }
      }
    }
  }

  private long used(long[] off) {
    long sum = 0;
    for (int k = 0; k < off.length; k++) {
      sum += pile.heads().get(k / 2).copies() * off[k];
    }
    return sum;
  }

  private void look(long sawn, long[] off) {
    List<Pile.Head> heads = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      Pile.Head e = pile.heads().get(h);
      PileSide l = new SawnEnd(e.left(), off[2 * h], e.min());
      PileSide r = new SawnEnd(e.right(), off[2 * h + 1], e.min());
      heads.add(
          new Pile.Head(e.copies(), e.mirror(), e.eachSide(), e.min(), e.max(), e.jump(), l, r));
    }
    PileSweep sweep = new PileSweep(new Pile(pile.pieces(), heads), types);
    long least = sweep.leastImbalance();
    long lone = heads.stream().mapToLong(Pile.Head::min).min().orElse(0);
    long each = Math.max(500, limit / 12);
    for (long more = 0; least + more < lone && sweep.best() == null; more = 2 * more + 1) {
      if (steps + sweep.steps() > limit) {
        break;
      }
      sweep.run(least + more, Math.min(limit - steps - sweep.steps(), each), false);
      if (sweep.best() == null && !sweep.sure()) {
        sweep.run(least + more, Math.min(limit - steps - sweep.steps(), each), true);
      }
    }
    steps += sweep.steps();
    PileDraft draft = sweep.best() == null ? null : sawn(sweep.best(), sawn, off);
    if (draft != null && (best == null || draft.cost().compareTo(best.cost()) < 0)) {
      best = draft;
    }
  }

  private PileDraft sawn(PileDraft whole, long sawn, long[] off) {
    List<List<List<Slot>>> heads = new ArrayList<>();
    long imbalance = 0;
    for (int h = 0; h < pile.heads().size(); h++) {
      Pile.Head head = pile.heads().get(h);
      List<List<Slot>> sides = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        List<Slot> row = new ArrayList<>(whole.heads().get(h).get(s));
        int last = row.size() - 1;
        long width = row.get(last).width() - off[2 * h + s];
        if (last > 0 && Math.abs(width - row.get(last - 1).width()) > head.jump()) {
          return null;
        }
        row.set(last, new Slot(width, row.get(last).types()));
        sides.add(row);
      }
      imbalance += PileTrim.imbalance(head, sides);
      heads.add(sides);
    }
    return new PileDraft(heads, new Pile.Cost(sawn, imbalance, whole.cost().bearing()));
  }
}

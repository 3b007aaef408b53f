package headcourse.stock.fan;

import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Lists the stones that may be set next on a side, what promises most first. */
final class FanTrials {
  private static final long ANY = 1L << 36;

  private final FanPile.Head head;
  private final PileTypes types;
  private final int[] left;
  private final int h;
  private final int[] from;
  private final List<FanTrial> found = new ArrayList<>();
  private final int[] picked;
  private long mix;
  private long roomSawn;
  private long partner;
  private boolean alike;
  private boolean shortest;

  /**
   * @param head the head
   * @param types the types of piece
   * @param left how many of each are at hand; changed and changed back
   * @param h place of the head in the pile
   * @param from by extent: the shortest type that holds it
   * @param seed in which order what seems as good goes
   */
  FanTrials(FanPile.Head head, PileTypes types, int[] left, int h, int[] from, long seed) {
    this.head = head;
    this.types = types;
    this.left = left;
    this.h = h;
    this.from = from;
    this.picked = new int[head.copies()];
    this.mix = (seed + 1) * 0x9E3779B97F4A7C15L | 1;
  }

  /** By extent: the shortest type that holds it, up to the longest piece. */
  static int[] shortest(PileTypes types) {
    int[] from = new int[(int) types.usable[types.size() - 1] + 1];
    int t = 0;
    for (int e = 0; e < from.length; e++) {
      while (types.usable[t] < e) {
        t++;
      }
      from[e] = t;
    }
    return from;
  }

  /** For each width only the shortest pieces at hand that hold it. */
  FanTrials shortest() {
    shortest = true;
    return this;
  }

  /**
   * The stones for one place.
   *
   * @param reach the side
   * @param index which stone, from 1 outwards
   * @param before width of the stone before it; negative where there is none
   * @param across width of the stone across; negative where that is of no matter
   * @param foot where it begins
   * @param sawn the most that may be sawn off it and those after it
   * @param imbalance where just that is sawn off: the most that it may differ
   * @param boxed whether it may differ by no more in any case
   */
  List<FanTrial> of(
      FanReach reach,
      int index,
      long before,
      long across,
      int foot,
      long sawn,
      long imbalance,
      boolean boxed) {
    roomSawn = sawn;
    partner = across;
    // While any stones will do, lots find some sooner.
    alike = imbalance < ANY;
    FanRows rows = reach.rows;
    short[] on = rows.on(index, foot);
    short[] ends = rows.ends(index, foot);
    for (int w = 0; w < on.length; w++) {
      long width = rows.min + w;
      if (before >= 0 && Math.abs(width - before) > head.jump()) {
        continue;
      }
      long apart = across < 0 ? 0 : head.copies() * Math.abs(width - across);
      if (boxed && apart > imbalance) {
        continue;
      }
      int outer = foot + rows.joint + (int) width;
      if (ends[w] >= 0 && reach.aimed(index, outer)) {
        pick(width, ends[w], true, 0, apart <= imbalance ? 0 : 1, 0, 0);
      }
      int rest = on[w] < 0 ? FanReach.NEVER : reach.sawn(index, outer, width);
      if (rest < FanReach.NEVER) {
        pick(width, on[w], false, rest, apart <= imbalance ? 0 : 1, 0, 0);
      }
    }
    Collections.sort(found);
    return found;
  }

  /** Picks pieces for the copies, shortest first; {@code spare} of the room stays free. */
  private void pick(
      long width, int extent, boolean end, long rest, int spare, int copy, long sawn) {
    if (copy == picked.length) {
      found.add(new FanTrial(width, end, picked.clone(), sawn, order(width, sawn + rest)));
      return;
    }
    if (extent >= from.length) {
      return;
    }
    for (int t = copy == 0 ? from[extent] : picked[copy - 1]; t < types.size(); t++) {
      long off = types.usable[t] - extent;
      if (left[t] == 0 || !types.fits.get(t).get(h)) {
        continue;
      }
      if (sawn + off * (picked.length - copy) + rest + spare > roomSawn) {
        return;
      }
      picked[copy] = t;
      left[t]--;
      pick(width, extent, end, rest, spare, copy + 1, sawn + off);
      left[t]++;
      if (shortest) {
        return;
      }
    }
  }

  private long order(long width, long sawn) {
    // Marsaglia's xorshift64.
    mix ^= mix << 13;
    mix ^= mix >>> 7;
    mix ^= mix << 17;
    long near = 0;
    if (partner >= 0) {
      near = 8 * Math.abs(width - partner);
    } else if (head.mirror() && alike) {
      near = 8 * nearest(picked[0]) + (mix >>> 8 & 31);
    }
    return Math.min(sawn, 1 << 20) << 40 | Math.min(near, 0xFFFF) << 24 | mix >>> 40;
  }

  /** How near in length the nearest piece at hand is that could be a partner. */
  private long nearest(int t) {
    if (left[t] >= picked.length) {
      return 0;
    }
    long near = 1 << 12;
    for (int i = t - 1; i >= 0; i--) {
      if (left[i] > 0 && types.fits.get(i).get(h)) {
        near = types.usable[t] - types.usable[i];
        break;
      }
    }
    for (int i = t + 1; i < types.size(); i++) {
      if (left[i] > 0 && types.fits.get(i).get(h)) {
        return Math.min(near, types.usable[i] - types.usable[t]);
      }
    }
    return near;
  }
}

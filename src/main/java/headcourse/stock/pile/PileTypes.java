package headcourse.stock.pile;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** The pieces of a pile by kind: those of one length that fit the same heads are alike. */
public final class PileTypes {
  /** By kind the length, ticks. */
  public final long[] usable;

  /** By kind how many there are. */
  public final int[] count;

  /** By kind and head whether it is high, deep and thick enough. */
  public final List<List<Boolean>> fits = new ArrayList<>();

  private final long[] extra;
  private final List<List<Integer>> members = new ArrayList<>();

  /** The kinds of a pile, the shortest first. */
  public PileTypes(Pile pile) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < pile.pieces().size(); i++) {
      order.add(i);
    }
    order.sort(
        Comparator.comparingLong((Integer i) -> pile.pieces().get(i).usable())
            .thenComparing(i -> pile.pieces().get(i).fits().toString())
            .thenComparing(i -> i));
    List<Long> lengths = new ArrayList<>();
    for (int i : order) {
      Pile.Piece p = pile.pieces().get(i);
      int last = lengths.size() - 1;
      if (last < 0 || lengths.get(last) != p.usable() || !fits.get(last).equals(p.fits())) {
        lengths.add(p.usable());
        fits.add(p.fits());
        members.add(new ArrayList<>());
        last++;
      }
      members.get(last).add(i);
    }
    extra = new long[pile.heads().size()];
    for (int h = 0; h < extra.length; h++) {
      Pile.Head head = pile.heads().get(h);
      for (int s = 0; s < 2; s++) {
        for (int i = 1; i <= pile.pieces().size(); i++) {
          extra[h] = Math.max(extra[h], head.side(s).extra(i));
        }
      }
    }
    usable = lengths.stream().mapToLong(l -> l).toArray();
    count = members.stream().mapToInt(List::size).toArray();
  }

  /** The most that a stone of a head is longer along its blank than it is wide. */
  long extra(int h) {
    return extra[h];
  }

  /** How many kinds there are. */
  public int size() {
    return usable.length;
  }

  /** The pieces themselves, to be handed out. */
  List<Deque<Integer>> pieces() {
    List<Deque<Integer>> out = new ArrayList<>();
    members.forEach(m -> out.add(new ArrayDeque<>(m)));
    return out;
  }

  /** Whether a piece of a type can be a stone of a head with nothing sawn off. */
  boolean whole(Pile.Head head, int h, int t) {
    return fits.get(t).get(h) && usable[t] >= head.min() && usable[t] <= head.max() + extra[h];
  }

  /** Whether two types are equally long, and differ in the heads that they fit. */
  boolean twins() {
    for (int t = 1; t < size(); t++) {
      if (usable[t] == usable[t - 1]) {
        return true;
      }
    }
    return false;
  }
}

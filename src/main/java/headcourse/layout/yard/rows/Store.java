package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The pieces of a pile, the shortest first, and which of them a stone may take. Of pieces that are
 * good for the same stones the shortest is enough: with any other the two could change places, and
 * no more would be sawn off. So only from which of these sorts a stone comes is to be tried.
 */
final class Store {
  /** What no piece can give. */
  static final long NEVER = Long.MAX_VALUE / 16;

  final Pile pile;
  final Steps steps = new Steps();
  private final int[] place;
  private final int[] index;
  private final long[] usable;
  private final List<int[]> sorts = new ArrayList<>();
  private final int[][] byUse;
  private final long[][] waste;
  private final boolean[] ticketed;

  Store(Pile pile) {
    this.pile = pile;
    int n = pile.pieces().size();
    ticketed = ticketed(pile);
    place =
        IntStream.range(0, n)
            .boxed()
            .sorted(
                Comparator.comparingLong((Integer p) -> pile.pieces().get(p).usable())
                    .thenComparing(p -> use(p))
                    .thenComparing(p -> p))
            .mapToInt(p -> p)
            .toArray();
    usable = new long[n];
    index = new int[n];
    Map<String, List<Integer>> of = new LinkedHashMap<>();
    for (int k = 0; k < n; k++) {
      usable[k] = pile.pieces().get(place[k]).usable();
      index[place[k]] = k;
      of.computeIfAbsent(use(place[k]), u -> new ArrayList<>()).add(k);
    }
    for (List<Integer> sort : of.values()) {
      sorts.add(sort.stream().mapToInt(k -> k).toArray());
    }
    int heads = pile.heads().size();
    byUse = new int[2 * heads][];
    waste = new long[2 * heads][];
    for (int u = 0; u < byUse.length; u++) {
      int h = u / 2;
      boolean key = u % 2 == 1;
      byUse[u] = IntStream.range(0, n).filter(k -> fits(k, h, key)).toArray();
      waste[u] = waste(byUse[u], pile.heads().get(h).copies());
    }
  }

  private static boolean[] ticketed(Pile pile) {
    boolean[] of = new boolean[pile.pieces().size()];
    for (Pile.Head head : pile.heads()) {
      for (Pile.Way way : head.ways()) {
        List<Pile.Ticket> keys = way.ticket() == null ? List.of() : List.of(way.ticket());
        Stream.of(way.left().tickets(), way.right().tickets(), keys)
            .flatMap(List::stream)
            .flatMap(t -> t.pieces().stream())
            .filter(p -> p >= 0)
            .forEach(p -> of[p] = true);
      }
    }
    return of;
  }

  /** What a piece is good for; one that a stone was ticketed for is a sort by itself. */
  private String use(int p) {
    Pile.Piece piece = pile.pieces().get(p);
    return (ticketed[p] ? "t" + p : "") + piece.fits() + piece.fitsKey();
  }

  /** Whether an ordinary stone of a head, or its key, may be of a piece. */
  boolean fits(int k, int head, boolean key) {
    return pile.pieces().get(place[k]).fits(head, key);
  }

  /** By length: what is sawn off at least if so many copies take their pieces first. */
  private long[] waste(int[] fit, int copies) {
    long longest = longest(fit);
    long[] out = new long[(int) Math.max(0, longest + 1)];
    for (int e = 0; e < out.length; e++) {
      int from = from(fit, e);
      out[e] = from + copies > fit.length ? NEVER : -e * (long) copies;
      for (int c = 0; c < copies && out[e] < NEVER; c++) {
        out[e] += usable[fit[from + c]];
      }
    }
    return out;
  }

  /**
   * What stones of a length saw off at least, all copies; {@link #NEVER} where they can't be had.
   */
  long waste(int head, boolean key, long extent) {
    long[] of = waste[2 * head + (key ? 1 : 0)];
    return extent < 0 || extent >= of.length ? NEVER : of[(int) extent];
  }

  long usable(int k) {
    return usable[k];
  }

  /** Place of a piece in the pile's list. */
  int place(int k) {
    return place[k];
  }

  /** Number here of a piece of the pile's list. */
  int index(int p) {
    return p < 0 ? -1 : index[p];
  }

  /** The pieces that ordinary stones of a head, or its key, may be. */
  int[] of(int head, boolean key) {
    return byUse[2 * head + (key ? 1 : 0)];
  }

  /** The pieces that ordinary stones of some head may be. */
  IntStream ordinary() {
    return IntStream.range(0, usable.length)
        .filter(k -> pile.pieces().get(place[k]).fits().contains(true));
  }

  /** Length of the longest of some pieces, or −1. */
  long longest(int[] of) {
    return of.length == 0 ? -1 : usable[of[of.length - 1]];
  }

  /** Where in a list of pieces those of a length begin. */
  int from(int[] of, long extent) {
    int low = 0;
    int high = of.length;
    while (low < high) {
      int mid = low + high >>> 1;
      if (usable[of[mid]] < extent) {
        low = mid + 1;
      } else {
        high = mid;
      }
    }
    return low;
  }

  /** The shortest pieces still there for so many copies, or null. */
  int[] shortest(BitSet used, int head, boolean key, long extent, int copies) {
    int[] of = of(head, key);
    int[] out = new int[copies];
    int n = 0;
    for (int i = from(of, extent); i < of.length && n < copies; i++) {
      if (!used.get(of[i])) {
        out[n++] = of[i];
      }
    }
    return n == copies ? out : null;
  }

  /**
   * All choices of pieces for a stone one of which is best in any case.
   *
   * @param own by copy: the piece that it was ticketed for, where it stands as it did; else null
   */
  List<int[]> all(BitSet used, int head, boolean key, long extent, int copies, int[] own) {
    if (own == null && sorts.size() == 1) {
      int[] one = shortest(used, head, key, extent, copies);
      return one == null ? List.of() : List.of(one);
    }
    List<int[]> out = new ArrayList<>();
    choose((BitSet) used.clone(), new Wanted(head, key, extent, own), new int[copies], 0, -1, out);
    return out;
  }

  private record Wanted(int head, boolean key, long extent, int[] own) {}

  private void choose(BitSet used, Wanted w, int[] taken, int copy, int after, List<int[]> out) {
    if (copy == taken.length) {
      out.add(taken.clone());
      return;
    }
    int mine = w.own() == null ? -1 : w.own()[copy];
    List<Integer> of = candidates(used, w);
    // Copies that are not as ticketed are alike, so their pieces only get longer.
    of.removeIf(k -> k == mine || k <= after);
    if (mine >= 0 && !used.get(mine) && usable[mine] >= w.extent()) {
      of.add(0, mine);
    }
    for (int k : of) {
      taken[copy] = k;
      used.set(k);
      choose(used, w, taken, copy + 1, w.own() == null ? k : after, out);
      used.clear(k);
    }
  }

  /** The shortest of each sort, but for what a shorter one that is good for less makes needless. */
  private List<Integer> candidates(BitSet used, Wanted w) {
    List<Integer> firsts = new ArrayList<>();
    for (int[] sort : sorts) {
      if (fits(sort[0], w.head(), w.key())) {
        int i = from(sort, w.extent());
        while (i < sort.length && used.get(sort[i])) {
          i++;
        }
        if (i < sort.length) {
          firsts.add(sort[i]);
        }
      }
    }
    firsts.sort(Comparator.naturalOrder());
    List<Integer> out = new ArrayList<>();
    for (int k : firsts) {
      if (out.stream().noneMatch(q -> makesNeedless(q, k))) {
        out.add(k);
      }
    }
    return out;
  }

  private boolean makesNeedless(int q, int k) {
    if (ticketed[place[q]]) {
      return false;
    }
    Pile.Piece a = pile.pieces().get(place[q]);
    Pile.Piece b = pile.pieces().get(place[k]);
    return covers(b.fits(), a.fits()) && covers(b.fitsKey(), a.fitsKey());
  }

  private static boolean covers(List<Boolean> more, List<Boolean> less) {
    for (int i = 0; i < less.size(); i++) {
      if (less.get(i) && !more.get(i)) {
        return false;
      }
    }
    return true;
  }
}

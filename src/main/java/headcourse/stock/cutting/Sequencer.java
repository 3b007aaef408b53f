package headcourse.stock.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds in which order parts lie on one blank so that they take the least length. */
public final class Sequencer {
  private static final int CACHE = 400_000;

  /** For so few parts it is quickest to walk the orders. */
  private static final int FEW = 8;

  private final Nesting nesting;
  private final int[] leaning;

  /** The same type the other way round, or −1. */
  private final int[] twin;

  private final int[] firstNode;
  private final long[] longest;
  private final Map<Key, Known> known = new HashMap<>();

  /** Whether some order was left undecided, so that nothing built on it is proved. */
  private boolean undecided;

  private final Couples pairs;
  private long work;

  /**
   * @param nesting how parts lie together
   */
  public Sequencer(Nesting nesting) {
    this.nesting = nesting;
    this.pairs = new Couples(nesting);
    Integer[] by = new Integer[nesting.typeOf.length];
    Arrays.setAll(by, i -> i);
    // What leans alike lies together: twice the lean is what two of a kind save on their extents.
    long[] lean = new long[by.length];
    for (int i = 0; i < by.length; i++) {
      for (int j = 0; j < by.length; j++) {
        lean[i] += nesting.distance[i][j] - nesting.distance[j][i] - nesting.extent[i];
      }
    }
    Arrays.sort(by, (a, b) -> lean[a] != lean[b] ? Long.compare(lean[a], lean[b]) : a - b);
    longest = new long[nesting.types];
    for (int i = by.length - 1; i >= 0; i--) {
      int t = nesting.typeOf[i];
      if (!nesting.turned[i]) {
        longest[t] = nesting.extent[i] + nesting.kerf;
        for (long d : nesting.distance[i]) {
          longest[t] = Math.max(longest[t], d);
        }
      }
    }
    leaning = Arrays.stream(by).mapToInt(i -> i).toArray();
    twin = new int[by.length];
    Arrays.fill(twin, -1);
    firstNode = new int[nesting.types];
    for (int i = twin.length - 1; i >= 0; i--) {
      firstNode[nesting.typeOf[i]] = i;
    }
    for (int i = 1; i < twin.length; i++) {
      if (nesting.typeOf[i] == nesting.typeOf[i - 1]) {
        twin[i] = i - 1;
        twin[i - 1] = i;
      }
    }
  }

  /** The types of parts, one by one. */
  private record Key(int[] parts, int hash) {
    static Key of(int[] present, int[] counts) {
      int n = 0;
      for (int t : present) {
        n += counts[t];
      }
      int[] parts = new int[n];
      n = 0;
      for (int t : present) {
        for (int k = 0; k < counts[t]; k++) {
          parts[n++] = t;
        }
      }
      return new Key(parts, Arrays.hashCode(parts));
    }

    /** One part less of a type. */
    Key without(int type) {
      int[] less = new int[parts.length - 1];
      int n = 0;
      boolean gone = false;
      for (int t : parts) {
        if (t == type && !gone) {
          gone = true;
        } else {
          less[n++] = t;
        }
      }
      return new Key(less, Arrays.hashCode(less));
    }

    @Override
    public boolean equals(Object o) {
      return o instanceof Key k && hash == k.hash && Arrays.equals(parts, k.parts);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }

  /** What is known of parts: an order, and lengths that they don't go in, or may not. */
  private static final class Known {
    private int[] order;
    private long atMost;
    private long over = -1;
    private long undecided = -1;
  }

  /** Orders looked at so far, in parts of a search step. */
  long work() {
    return work;
  }

  boolean undecided() {
    return undecided;
  }

  /** Whether so many of each type are known to go on one blank. */
  boolean fits(int[] counts, long usable) {
    return order(counts, usable) > 0;
  }

  /** Whether so many of each type are not known to be too many for one blank. */
  boolean mayFit(int[] counts, long usable) {
    return order(counts, usable) >= 0;
  }

  /** The same, where bounds have been looked at before. */
  boolean mayFitByOrder(int[] present, int[] counts, long usable) {
    return known(present, counts, usable) >= 0;
  }

  /** Whether one of each, or one where they are the same, go on one blank. */
  boolean pairFits(int s, int t, long usable) {
    return pairs.least(s, t) <= usable;
  }

  /** 1 where an order that short is known, −1 where there is none, 0 where the search broke off. */
  private int order(int[] counts, long usable) {
    if (nesting.leastLength(counts) > usable) {
      return -1;
    }
    return known(Nesting.present(counts), counts, usable);
  }

  private int known(int[] present, int[] counts, long usable) {
    if (nesting.square || atMost(present, counts) <= usable) {
      return 1;
    }
    Key key = Key.of(present, counts);
    Known of = known.get(key);
    if (of == null) {
      of = new Known();
      of.order = start(key, present, counts, usable);
      of.atMost = length(of.order);
      if (known.size() < CACHE) {
        known.put(key, of);
      }
    }
    if (of.atMost > usable && of.over < usable && of.undecided != usable) {
      if (holdsTooMuch(key, usable)) {
        of.over = usable;
        return -1;
      }
      OrderWalk walk = new OrderWalk(nesting, counts, usable + 1, usable);
      walk.go();
      undecided |= walk.tired();
      work += walk.steps();
      if (walk.best() != null) {
        of.atMost = walk.length();
        of.order = walk.best();
      } else if (walk.tired()) {
        of.undecided = usable;
      } else {
        of.over = usable;
      }
    }
    return of.atMost <= usable ? 1 : of.over >= usable ? -1 : 0;
  }

  /** Remembers an order of parts that was found elsewhere; gives its length. */
  long know(int[] order) {
    int[] counts = new int[nesting.types];
    for (int i : order) {
      counts[nesting.typeOf[i]]++;
    }
    Known of = known.computeIfAbsent(Key.of(Nesting.present(counts), counts), k -> new Known());
    long length = length(order);
    if (of.order == null || length < of.atMost) {
      of.order = order.clone();
      of.atMost = length;
    }
    return length;
  }

  /** A good order: that of all but one of them, and this one where it adds least. */
  private int[] start(Key key, int[] present, int[] counts, long usable) {
    int[] best = nodes(key.parts.length > FEW ? quick(counts) : first(counts));
    long length = length(best);
    work += 2L * best.length;
    int[] with = new int[best.length];
    for (int i = 0; i < present.length && length > usable; i++) {
      int t = present[i];
      Known rest = known.get(key.without(t));
      if (rest == null) {
        continue;
      }
      work += best.length;
      for (int node = firstNode[t]; node < twin.length && nesting.typeOf[node] == t; node++) {
        for (int j = 0; j < with.length; j++) {
          System.arraycopy(rest.order, 0, with, 0, j);
          System.arraycopy(rest.order, j, with, j + 1, with.length - 1 - j);
          with[j] = node;
          long l = length(with);
          if (l < length) {
            best = with.clone();
            length = l;
          }
        }
      }
    }
    return best;
  }

  private static int[] nodes(List<Integer> order) {
    int[] nodes = new int[order.size()];
    for (int i = 0; i < nodes.length; i++) {
      nodes[i] = order.get(i);
    }
    return nodes;
  }

  /** Whether all but one of them are known to be too many. */
  private boolean holdsTooMuch(Key key, long usable) {
    for (int i = 0; i < key.parts.length; i++) {
      if (i == 0 || key.parts[i] != key.parts[i - 1]) {
        Known rest = known.get(key.without(key.parts[i]));
        if (rest != null && rest.over >= usable) {
          return true;
        }
      }
    }
    return false;
  }

  /** In any order they take no more than this. */
  private long atMost(int[] present, int[] counts) {
    long sum = 0 - nesting.kerf;
    for (int t : present) {
      sum += counts[t] * longest[t];
    }
    return sum;
  }

  /** The nodes from left to right in the shortest order. */
  public List<Integer> best(int[] counts) {
    if (nesting.square) {
      return run(counts, false);
    }
    List<Integer> best = quick(counts);
    OrderWalk walk = new OrderWalk(nesting, counts, length(best), -1);
    walk.go();
    return walk.best() == null ? best : Arrays.stream(walk.best()).boxed().toList();
  }

  /** Leaning parts side by side. */
  private List<Integer> first(int[] counts) {
    List<Integer> best = run(counts, false);
    List<Integer> other = run(counts, true);
    return length(other) < length(best) ? other : best;
  }

  /** Leaning parts side by side, then moved one by one to where they save most. */
  private List<Integer> quick(int[] counts) {
    List<Integer> best = first(counts);
    long length = length(best);
    boolean better = true;
    while (better) {
      better = false;
      for (int i = 0; i < best.size(); i++) {
        work += best.size();
        if (twin[best.get(i)] >= 0) {
          List<Integer> flipped = new ArrayList<>(best);
          flipped.set(i, twin[best.get(i)]);
          long l = length(flipped);
          if (l < length) {
            best = flipped;
            length = l;
            better = true;
          }
        }
        for (int j = 0; j < best.size(); j++) {
          List<Integer> moved = new ArrayList<>(best);
          moved.add(j, moved.remove(i));
          long l = length(moved);
          if (l < length) {
            best = moved;
            length = l;
            better = true;
          }
        }
      }
    }
    return best;
  }

  private List<Integer> run(int[] counts, boolean backwards) {
    List<Integer> order = new ArrayList<>();
    int[] left = counts.clone();
    for (int i = 0; i < leaning.length; i++) {
      int node = leaning[backwards ? leaning.length - 1 - i : i];
      for (; left[nesting.typeOf[node]] > 0; left[nesting.typeOf[node]]--) {
        order.add(node);
      }
    }
    return order;
  }

  /** Where each node begins, packed to the left. */
  public long[] starts(List<Integer> order) {
    long[] at = new long[order.size()];
    for (int j = 1; j < at.length; j++) {
      for (int i = 0; i < j; i++) {
        at[j] = Math.max(at[j], at[i] + nesting.distance[order.get(i)][order.get(j)]);
      }
    }
    return at;
  }

  /** Length that an order takes. */
  long length(List<Integer> order) {
    return length(nodes(order));
  }

  private long length(int[] nodes) {
    long[] at = new long[nodes.length];
    long end = 0;
    for (int j = 0; j < at.length; j++) {
      for (int i = 0; i < j; i++) {
        at[j] = Math.max(at[j], at[i] + nesting.distance[nodes[i]][nodes[j]]);
      }
      end = Math.max(end, at[j] + nesting.extent[nodes[j]]);
    }
    return end;
  }
}

package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Searches a layered graph layer by layer and keeps of each layer the states that can come to
 * least: a beam, or where none had to be let go, all there is. Rows are searched with it stone by
 * stone, and those of upright stones piece by piece too.
 */
abstract class LayeredSearch<S extends LayeredSearch.State> {
  /** A state; those with the same key go on in just the same ways. */
  abstract static class State {
    private long[] key;
    private int hash;

    /** What matters of it for what is still to come. */
    abstract long[] key();

    /** Number of its layer; steps lead to greater ones. */
    abstract int layer();

    @Override
    public boolean equals(Object o) {
      return o instanceof State s && hashCode() == s.hashCode() && Arrays.equals(key, s.key);
    }

    @Override
    public int hashCode() {
      if (key == null) {
        key = key();
        hash = mix(Arrays.hashCode(key));
      }
      return hash;
    }

    static int mix(int x) {
      int y = x * 0x9E3779B9;
      return y ^ y >>> 15;
    }
  }

  /** Whether no more steps may be taken. */
  abstract boolean over();

  /** How many states of a layer are kept. */
  abstract int width(int layer);

  /** Whether a state can come to less than what is known. */
  abstract boolean open(S s);

  /** Takes note of a state in which all is set; whether it is one. */
  abstract boolean found(S s);

  /**
   * The states one step on.
   *
   * @param among how many states its layer kept
   */
  abstract List<S> next(S s, int among);

  /**
   * Of two that go on in the same ways the one that costs less; the first if they cost the same.
   */
  abstract S better(S a, S b);

  /** Those first that can come to least. */
  abstract Comparator<S> order();

  /** Takes note of a state that was let go though it was open. */
  abstract void dropped(S s);

  /** Searches from a state on; whether that came to its end before the steps did. */
  boolean search(S first) {
    TreeMap<Integer, Layer> layers = new TreeMap<>();
    layers.computeIfAbsent(first.layer(), Layer::new).add(first);
    while (!layers.isEmpty()) {
      List<S> kept = layers.pollFirstEntry().getValue().kept();
      for (S s : kept) {
        if (over()) {
          return false;
        }
        for (S n : open(s) ? next(s, kept.size()) : List.<S>of()) {
          if (open(n) && !found(n)) {
            layers.computeIfAbsent(n.layer(), Layer::new).add(n);
          }
        }
      }
    }
    return !over();
  }

  private final class Layer {
    private final Map<S, S> states = new LinkedHashMap<>();
    private final int most;
    private S last;

    Layer(int number) {
      most = width(number);
    }

    void add(S s) {
      if (last != null && order().compare(s, last) >= 0) {
        dropped(s);
        return;
      }
      states.merge(s, s, LayeredSearch.this::better);
      if (states.size() > 2L * most) {
        kept();
      }
    }

    List<S> kept() {
      List<S> all = new ArrayList<>(states.values());
      if (all.size() > most) {
        all.sort(order());
        List<S> others = all.subList(most, all.size());
        for (S s : others) {
          dropped(s);
          states.remove(s);
        }
        others.clear();
        last = all.get(most - 1);
      }
      return all;
    }
  }
}

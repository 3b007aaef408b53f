package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Goes through the states layer by layer, head after head, and keeps of each layer those that can
 * come to least. Where it never had to let one go but for its cost, all was looked at.
 */
final class Beam {
  /** By how much more states may stand half way through a place, before the partner is set. */
  private static final int HALF_WAY = 24;

  /**
   * How many ways in all the states before a head may go on in, where not all is looked at: as many
   * as there are times this many steps, but no more than so many.
   */
  private static final long FOR_EACH = 40_000;

  private static final int STARTS = 64;

  private final Pile pile;
  private final Moves moves;
  private final int words;
  private final Reaches reaches;
  private final long limit;
  private int width;
  private boolean wholes;
  private int parts;
  private long[] bar;
  private int most;
  private int seed;
  private Node best;
  private boolean complete;

  /**
   * @param limit how many steps may be taken in all
   */
  Beam(Pile pile, Store store, Moves moves, Reaches reaches, long limit) {
    this.pile = pile;
    this.moves = moves;
    this.reaches = reaches;
    this.limit = limit;
    this.words = store.words();
  }

  /**
   * What a run is to find.
   *
   * @param width how many states of a layer are kept
   * @param widths which widths are looked at
   * @param cap length sawn off that counts as none
   * @param parts how many parts of the cost must be less than what is known
   * @param most how many stones may change
   * @param draft stones that stay, or null
   * @param seed which of states that come to as little are kept; 0 where all parts count
   */
  record Aim(int width, Moves.Widths widths, long cap, int parts, int most, Draft draft, int seed) {
    Aim(int width, Moves.Widths widths, long cap, int parts) {
      this(width, widths, cap, parts, Integer.MAX_VALUE, null, 0);
    }

    Aim changing(int stones) {
      return new Aim(width, widths, cap, parts, stones, draft, seed);
    }

    Aim with(Draft known) {
      return new Aim(width, widths, cap, parts, most, known, seed);
    }

    Aim seeded(int other) {
      return new Aim(width, widths, cap, parts, most, draft, other);
    }
  }

  /** The best state found, or what was known. */
  Node best() {
    return best;
  }

  /** Whether the last run looked at all that could cost less. */
  boolean complete() {
    return complete;
  }

  long steps() {
    return moves.steps();
  }

  boolean over() {
    return moves.steps() > limit;
  }

  /**
   * Runs once.
   *
   * @param known the best that is known already, or null
   */
  void run(Aim aim, Cost known) {
    width = aim.width();
    wholes = aim.widths() != Moves.Widths.ALL;
    parts = aim.parts();
    most = aim.most();
    moves.widths(aim.widths());
    moves.cap(aim.cap());
    moves.room(room(aim, known));
    best = null;
    bar = known == null ? null : known.parts(aim.cap());
    complete = !wholes;
    seed = aim.seed();
    moves.draft(aim.draft());
    Node from = new Node(words);
    if (aim.draft() != null) {
      from.used = aim.draft().held(words);
    }
    List<Node> pool = List.of(from);
    for (int h = 0; h < pile.heads().size() && !pool.isEmpty(); h++) {
      pool = head(h, pool, aim.cap());
    }
    complete &= !over() && aim.draft() == null;
  }

  /** How much may be sawn off in all by what costs less than what is known. */
  private long room(Aim aim, Cost known) {
    boolean others =
        known == null
            || known.changes() > moves.forced()
            || known.moved() > 0
            || known.shortfall() > moves.leastShortfall();
    if (others) {
      return Store.NEVER;
    }
    if (known.sawn() > aim.cap() || known.imbalance() == 0) {
      return known.sawn();
    }
    return aim.parts() == Cost.LEADING ? known.sawn() : aim.cap();
  }

  private boolean beaten(Node n) {
    return n.low[0] > most
        || n.low[3] >= Store.NEVER / 2
        || bar != null && Arrays.compare(n.low, 0, parts, bar, 0, parts) >= 0;
  }

  private List<Node> head(int h, List<Node> pool, long cap) {
    Layer done = new Layer();
    Layer layer = new Layer();
    for (Node n : pool) {
      List<Node> next = new ArrayList<>();
      for (int way : ways(h, pool.size())) {
        if (!over()) {
          moves.start(n, way, next);
        }
      }
      sort(next, h, layer, done, cap);
    }
    for (int half = 0; !layer.nodes.isEmpty() && !over(); half++) {
      boolean pairs = wholes && pile.heads().get(h).mirror() && half % 2 == 1;
      Layer following = new Layer();
      for (Node n : layer.kept(pairs ? width * HALF_WAY : width)) {
        if (!beaten(n)) {
          sort(moves.from(n), h, following, done, cap);
        }
        if (over()) {
          break;
        }
      }
      layer = following;
    }
    return done.kept(width);
  }

  private void sort(List<Node> next, int h, Layer layer, Layer done, long cap) {
    for (Node n : next) {
      if (beaten(n)) {
        continue;
      }
      if (!n.whole) {
        layer.add(n);
      } else if (h + 1 < pile.heads().size()) {
        done.add(n);
      } else {
        best = n;
        bar = n.cost().parts(cap);
      }
    }
  }

  /** The ways of a head, those first that may bear nearest the target. */
  private List<Integer> ways(int h, int states) {
    List<Integer> ways = reaches.byBearing(h);
    int few = (int) Math.max(4, Math.min(STARTS, limit / FOR_EACH) / states);
    return wholes && ways.size() > few ? ways.subList(0, few) : ways;
  }

  /** States of which none goes on in the same ways as another. */
  private final class Layer {
    private final List<Node> nodes = new ArrayList<>();
    private final Map<Node, Integer> places = new HashMap<>();

    void add(Node n) {
      Integer at = places.putIfAbsent(n, nodes.size());
      if (at == null) {
        nodes.add(n);
      } else if (!nodes.get(at).noWorse(n)) {
        nodes.set(at, n);
      }
    }

    List<Node> kept(int most) {
      if (nodes.size() <= most) {
        return nodes;
      }
      complete = false;
      int to = seed == 0 ? Cost.PARTS : Cost.LEADING;
      nodes.sort(
          ((Comparator<Node>) (a, b) -> Arrays.compare(a.low, 0, to, b.low, 0, to))
              .thenComparingInt(n -> n.hashCode() * (2 * seed + 1)));
      return new ArrayList<>(nodes.subList(0, most));
    }
  }
}

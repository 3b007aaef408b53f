package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Sets the heads stone by stone, head after head. Where it never had to let a state go but for its
 * cost, all was looked at.
 */
final class Beam extends LayeredSearch<Node> {
  /** By how much more states may stand half way through a place, before the partner is set. */
  private static final int HALF_WAY = 8;

  /**
   * How many ways in all the states before a head may go on in, where not all is looked at: as many
   * as there are times this many steps, but no more than so many.
   */
  private static final long FOR_EACH = 40_000;

  private static final int STARTS = 64;

  /** Whether the last run looked at all that could cost less. */
  boolean complete;

  private final Pile pile;
  private final Steps steps;
  private final Moves moves;
  private final Reaches reaches;
  private final long limit;
  private Aim aim;
  private long[] bar;
  private Node best;

  /**
   * @param limit how many steps may be taken in all
   */
  Beam(Store store, Moves moves, Reaches reaches, long limit) {
    pile = store.pile;
    steps = store.steps;
    this.moves = moves;
    this.reaches = reaches;
    this.limit = limit;
  }

  /**
   * What a run is to find.
   *
   * @param width how many states of a layer are kept
   * @param whole whether stones are looked at only as wide as a piece gives, or as the stone on the
   *     other side, and the last as it must be
   * @param cap length sawn off that counts as none
   * @param parts how many parts of the cost must be less than what is known
   * @param most how many stones may change
   * @param draft stones that stay, or null
   * @param seed which of states that come to as little are kept; 0 where all parts count
   */
  record Aim(int width, boolean whole, long cap, int parts, int most, Draft draft, int seed) {
    Aim with(Draft known) {
      return new Aim(width, whole, cap, parts, most, known, seed);
    }

    Aim seeded(int other) {
      return new Aim(width, whole, cap, parts, most, draft, other);
    }
  }

  /**
   * Runs once.
   *
   * @param known the best that is known already, or null
   * @return the best state found that costs less, or null
   */
  Node run(Aim as, Cost known) {
    aim = as;
    moves.aim = aim;
    best = null;
    bar = known == null ? null : known.parts(aim.cap());
    complete = !aim.whole();
    boolean ended = search(new Node(aim.draft() == null ? new BitSet() : aim.draft().held()));
    complete &= ended && aim.draft() == null;
    return best;
  }

  @Override
  boolean over() {
    return steps.taken() > limit;
  }

  @Override
  int width(int layer) {
    Pile.Head head = pile.heads().get(Math.min(Node.head(layer), pile.heads().size() - 1));
    boolean half = aim.whole() && head.mirror() && Node.placed(layer) % 2 == 1;
    return half ? aim.width() * HALF_WAY : aim.width();
  }

  @Override
  boolean open(Node n) {
    return n.before == null
        || n.low[0] <= aim.most()
            && n.low[3] < Store.NEVER / 2
            && (bar == null || Arrays.compare(n.low, 0, aim.parts(), bar, 0, aim.parts()) < 0);
  }

  @Override
  boolean found(Node n) {
    if (!n.whole || n.head + 1 < pile.heads().size()) {
      return false;
    }
    best = n;
    bar = n.cost().parts(aim.cap());
    return true;
  }

  @Override
  List<Node> next(Node n, int among) {
    if (!n.whole) {
      return moves.from(n);
    }
    List<Node> next = new ArrayList<>();
    for (int way : ways(n.head + 1, among)) {
      if (!over()) {
        moves.start(n, way, next);
      }
    }
    return next;
  }

  /** The ways of a head, those first that may bear nearest the target. */
  private List<Integer> ways(int h, int states) {
    List<Integer> ways = reaches.byBearing(h);
    int few = (int) Math.max(4, Math.min(STARTS, limit / FOR_EACH) / states);
    return aim.whole() && ways.size() > few ? ways.subList(0, few) : ways;
  }

  @Override
  Node better(Node a, Node b) {
    // What is sawn off and wanting of spare is the same for both.
    return a.cost().compare(b.cost(), 0) <= 0 ? a : b;
  }

  @Override
  Comparator<Node> order() {
    int to = aim.seed() == 0 ? Cost.PARTS : Cost.LEADING;
    int times = 2 * aim.seed() + 1;
    return (a, b) -> {
      int c = Arrays.compare(a.low, 0, to, b.low, 0, to);
      return c != 0 ? c : Integer.compare(a.hashCode() * times, b.hashCode() * times);
    };
  }

  @Override
  void dropped(Node n) {
    complete = false;
  }
}

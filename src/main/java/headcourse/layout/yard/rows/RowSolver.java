package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets heads from a pile of measured pieces: fewest changes of what was ticketed, then what lands,
 * then least sawn off, within what is given; then sides most alike where they are to be; then least
 * sawn off; then bearings nearest their target.
 */
public final class RowSolver {
  private static final int FIRST = 48;
  private static final int WIDEST = 1 << 20;

  /** With how many steps for each state kept the first look gets by. */
  private static final long SHARE = 4_000;

  private final Pile pile;
  private final long limit;
  private final Store store;
  private final Moves moves;
  private final Beam beam;
  private final int first;
  private Node best;
  private int changes;
  private long least;
  private boolean proved;

  private RowSolver(Pile pile, long limit) {
    this.pile = pile;
    this.limit = limit;
    store = new Store(pile);
    Reaches reaches = new Reaches(pile, store);
    moves = new Moves(pile, store, reaches);
    beam = new Beam(pile, store, moves, reaches, limit);
    first = (int) Math.max(4, Math.min(FIRST, limit / SHARE));
  }

  /**
   * Solves.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   */
  public static Answer solve(Pile pile, long limit) {
    return new RowSolver(pile, limit).run();
  }

  /**
   * Some choice soon found, the best or not.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   */
  public static Answer any(Pile pile, long limit) {
    RowSolver s = new RowSolver(pile, limit);
    s.look(new Beam.Aim(s.first, Moves.Widths.WHOLE, 0, Cost.LEADING, Integer.MAX_VALUE));
    return s.best == null
        ? new Answer(List.of(), null, 0, Cost.NONE, false, 0, s.moves.steps())
        : new Answer(s.chosen(), s.best.cost(), 0, Cost.NONE, false, 0, s.moves.steps());
  }

  private Answer run() {
    changes = moves.forced();
    boolean all = pile.ticketed() ? fewest() : leastSawn();
    if (best == null) {
      return new Answer(List.of(), null, 0, Cost.NONE, all, changes, moves.steps());
    }
    least = best.sawn;
    proved = all;
    mostAlike();
    Cost cost = best.cost();
    return new Answer(
        chosen(), cost, least, proved ? cost : Cost.NONE, proved, changes, moves.steps());
  }

  /** Finds the least that is sawn off; whether that is sure. */
  private boolean leastSawn() {
    look(new Beam.Aim(first, Moves.Widths.WHOLE, 0, Cost.LEADING, Integer.MAX_VALUE));
    for (int width = 8 * first; width <= WIDEST && !beam.over(); width *= 16) {
      look(new Beam.Aim(width, Moves.Widths.ALL, 0, Cost.LEADING, Integer.MAX_VALUE));
      if (beam.complete()) {
        return true;
      }
    }
    return false;
  }

  private boolean fewest() {
    boolean all = true;
    for (int most = changes; !beam.over(); most++) {
      look(new Beam.Aim(WIDEST, Moves.Widths.ALL, 0, Cost.LEADING, most));
      all &= beam.complete();
      if (best != null) {
        return all;
      }
      changes = all ? most + 1 : changes;
      if (most > 2 * pile.pieces().size() + 8) {
        return all;
      }
    }
    return false;
  }

  private void mostAlike() {
    long cap = least + pile.give();
    int most = pile.ticketed() ? best.changes : Integer.MAX_VALUE;
    boolean all = false;
    look(new Beam.Aim(first, Moves.Widths.WHOLE, cap, 7, most));
    for (int width = 8 * first; width <= WIDEST && !beam.over(); width *= 16) {
      look(new Beam.Aim(width, Moves.Widths.ALL, cap, 7, most));
      if (beam.complete()) {
        all = true;
        break;
      }
    }
    proved &= all;
  }

  private void look(Beam.Aim aim) {
    beam.run(aim, best == null ? null : best.cost());
    if (beam.best() != null) {
      best = beam.best();
    }
  }

  private List<Answer.Chosen> chosen() {
    List<Node> steps = new ArrayList<>();
    for (Node n = best; n.before != null; n = n.before) {
      steps.add(0, n);
    }
    List<Answer.Chosen> out = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      List<Integer> key = List.of();
      int way = 0;
      List<List<Answer.Picked>> sides = List.of(new ArrayList<>(), new ArrayList<>());
      for (Node n : steps) {
        if (n.head != h) {
          continue;
        }
        List<Integer> of = new ArrayList<>();
        for (int k : n.pieces) {
          of.add(store.place(k));
        }
        if (n.side < 0) {
          key = of;
          way = n.way;
        } else {
          sides.get(n.side).add(new Answer.Picked(n.width, of));
        }
      }
      out.add(new Answer.Chosen(way, key, sides.get(0), sides.get(1)));
    }
    return out;
  }
}

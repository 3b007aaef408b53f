package headcourse.layout.yard.rows;

import java.util.Arrays;
import java.util.Random;

/**
 * Local search: of the best choice known some stones are set anew and the others stay, over and
 * over. A whole head, with another key or one stone more or less; places side by side, so that
 * stones change places; places anywhere, so that stones of two heads exchange their pieces.
 */
final class Betterment {
  /** How many places are set anew at once. */
  private static final int PLACES = 3;

  private final Steps steps;
  private final int heads;
  private final Beam beam;
  private final Random random = new Random(1);

  Betterment(Store store, Beam beam) {
    steps = store.steps;
    heads = store.pile.heads().size();
    this.beam = beam;
  }

  /**
   * Betters a choice.
   *
   * @param from the choice
   * @param aim as in which run
   * @param until how many steps may be taken in all
   * @param good no choice costs less
   */
  Node run(Node from, Beam.Aim aim, long until, Cost good) {
    Node best = from;
    int[] lengths = lengths(best);
    int idle = 0;
    int turn = 0;
    while (idle++ < lengths.length + 6 * Arrays.stream(lengths).sum()
        && steps.taken() < until
        && best.cost().compare(good, aim.cap(), aim.parts()) > 0) {
      Node found = beam.run(aim.with(freed(best, turn++, lengths)), best.cost());
      if (found != null) {
        best = found;
        lengths = lengths(best);
        idle = 0;
      }
    }
    return best;
  }

  /** By head how many stones its longer side has. */
  private int[] lengths(Node whole) {
    int[] of = new int[heads];
    for (Node n = whole; n.before != null; n = n.before) {
      of[n.head] = Math.max(of[n.head], Math.max(n.set[0], n.set[1]));
    }
    return of;
  }

  private Draft freed(Node known, int turn, int[] lengths) {
    Draft draft = new Draft(known);
    int all = Arrays.stream(lengths).sum();
    if (heads > 1 && turn % (heads + all) < heads) {
      draft.free(turn % (heads + all));
      return draft;
    }
    int h = random.nextInt(heads);
    int at = 1 + random.nextInt(lengths[h]);
    for (int i = 0; i < PLACES; i++) {
      draft.free(h, at);
      if (turn % 2 == 0) {
        at = at % lengths[h] + 1;
      } else {
        h = random.nextInt(heads);
        at = 1 + random.nextInt(lengths[h]);
      }
    }
    return draft;
  }
}

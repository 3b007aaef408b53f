package headcourse.layout.yard.rows;

import java.util.Random;

/**
 * Local search: of the best choice known some stones are set anew and the others stay, over and
 * over. A whole head, with another key or one stone more or less; places side by side, so that
 * stones change places; places anywhere, so that stones of two heads exchange their pieces.
 */
final class Betterment {
  /** How many places are set anew at once. */
  private static final int PLACES = 3;

  private final Pile pile;
  private final Store store;
  private final Beam beam;
  private final Random random = new Random(1);

  Betterment(Pile pile, Store store, Beam beam) {
    this.pile = pile;
    this.store = store;
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
    int idle = 0;
    int heads = pile.heads().size();
    Draft draft = new Draft(best, heads);
    int all = 0;
    for (int h = 0; h < heads; h++) {
      all += draft.length(h);
    }
    int turn = 0;
    while (idle < heads + 6 * all
        && beam.steps() < until
        && best.cost().compare(good, aim.cap(), aim.parts()) > 0) {
      draft.keep();
      choose(draft, turn++, heads, all);
      beam.run(aim.with(draft), best.cost());
      idle++;
      if (beam.best() != null) {
        best = beam.best();
        draft = new Draft(best, heads);
        idle = 0;
      }
    }
    return best;
  }

  private void choose(Draft draft, int turn, int heads, int all) {
    if (heads > 1 && turn % (heads + all) < heads) {
      draft.free(turn % (heads + all));
      return;
    }
    int h = random.nextInt(heads);
    int at = 1 + random.nextInt(draft.length(h));
    for (int i = 0; i < PLACES; i++) {
      draft.free(h, at);
      if (turn % 2 == 0) {
        at = at % draft.length(h) + 1;
      } else {
        h = random.nextInt(heads);
        at = 1 + random.nextInt(draft.length(h));
      }
    }
  }
}

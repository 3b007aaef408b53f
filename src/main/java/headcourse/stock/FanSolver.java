package headcourse.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Chooses the stones of heads of which some are fans from one pile: least length sawn off, then
 * sides most alike where they are to be, then bearings nearest their target.
 *
 * <p>A floor under the cost comes from {@link FanReach}, a first choice from a quick hand and from
 * searches aimed at single ends; what meets the floor is proved best. Else a complete search goes
 * on until it has seen all or its steps are used up.
 */
final class FanSolver {
  private FanSolver() {}

  /**
   * Solves.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   */
  static FanPile.Answer solve(FanPile pile, long limit) {
    PileTypes types = new PileTypes(new Pile(pile.pieces(), List.of()));
    List<FanWays> ways = new ArrayList<>();
    List<List<FanWay>> all = new ArrayList<>();
    boolean complete = true;
    for (int h = 0; h < pile.heads().size(); h++) {
      FanWays of = new FanWays(pile, types, h);
      ways.add(of);
      all.add(of.all(types.count));
      complete &= of.complete();
    }
    FanFloor floors = new FanFloor(pile, types, all, ways);
    Pile.Cost floor = floors.cost();
    if (floor == null) {
      return none(true, 0);
    }
    FanDraft best = new FanHand(pile, types, ways).find();
    FanQuick quick = new FanQuick(pile, types, ways, floors, limit / 2);
    for (List<Integer> order : orders(pile.heads().size())) {
      if (best == null || best.cost().compareTo(floor) > 0) {
        FanDraft other = quick.find(order);
        best = other != null && other.betterThan(best) ? other : best;
      }
    }
    FanProof proof = new FanProof(pile, types, all, floor, best, limit - quick.steps());
    boolean proved = proof.run() && complete;
    proved |= proof.best() != null && proof.best().cost().compareTo(floor) <= 0;
    long steps = quick.steps() + proof.steps();
    best = proof.best();
    if (best == null) {
      return none(proved, steps);
    }
    PileDraft draft = new PileDraft(best.heads(), best.cost());
    Pile.Cost bound = complete ? proof.floor() : floor;
    return new FanPile.Answer(
        best.fans(), new Pile.Answer(draft.chosen(types), best.cost(), bound, proved, steps), floor);
  }

  private static FanPile.Answer none(boolean proved, long steps) {
    Pile.Answer none = new Pile.Answer(List.of(), null, Pile.Cost.NONE, proved, steps);
    return new FanPile.Answer(List.of(), none, Pile.Cost.NONE);
  }

  /** Heads as they come, and the other way round. */
  private static List<List<Integer>> orders(int heads) {
    List<Integer> order = new ArrayList<>();
    for (int h = 0; h < heads; h++) {
      order.add(h);
    }
    List<Integer> back = new ArrayList<>(order);
    Collections.reverse(back);
    return heads < 2 ? List.of(order) : List.of(order, back);
  }
}

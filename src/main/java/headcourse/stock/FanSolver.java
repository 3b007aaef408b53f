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
  /** Extents worked out for a step. */
  static final int WORK = 150;

  private FanSolver() {}

  /**
   * Solves.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   */
  static FanPile.Answer solve(FanPile pile, long limit) {
    return solve(pile, null, limit);
  }

  /**
   * Looks for a choice that costs less than what is known already.
   *
   * @param pile pieces and heads
   * @param beat what it must cost less than, or null
   * @param limit how many steps it may take
   */
  static FanPile.Answer solve(FanPile pile, Pile.Cost beat, long limit) {
    PileTypes types = types(pile);
    List<FanWays> ways = new ArrayList<>();
    List<List<FanWay>> all = new ArrayList<>();
    boolean complete = true;
    long steps = 0;
    for (int h = 0; types.size() > 0 && h < pile.heads().size(); h++) {
      FanWays of = new FanWays(pile, types, h, Integer.MAX_VALUE);
      ways.add(of);
      all.add(of.all(types.count));
      complete &= of.complete();
      steps += of.work() / WORK;
    }
    FanFloor floors = new FanFloor(pile, types, all, ways);
    Pile.Cost floor = types.size() == 0 ? null : floors.cost();
    if (floor == null) {
      return none(true, beat == null ? Pile.Cost.NONE : beat, steps);
    }
    FanQuick quick = new FanQuick(pile, types, ways, floors, limit / 2);
    FanDraft best = quick(quick, new FanHand(pile, types, ways).find(), floor);
    steps += quick.steps();
    FanProof proof = new FanProof(pile, types, all, floor, best, beat, limit - steps);
    boolean proved = proof.run() && complete;
    steps += proof.steps();
    best = proof.best();
    Pile.Cost bound = complete ? proof.floor() : floor;
    if (best == null) {
      return none(proved, bound, steps);
    }
    proved |= best.cost().compareTo(bound) <= 0;
    return answer(
            types, best, bound.compareTo(best.cost()) < 0 ? bound : best.cost(), proved, steps)
        .over(floor);
  }

  /**
   * A choice soon found: a hand's, or one for the ends that are nearest the target.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   * @param fans how many striking points of each head are looked at
   */
  static FanPile.Answer quick(FanPile pile, long limit, int fans) {
    PileTypes types = types(pile);
    List<FanWays> ways = new ArrayList<>();
    List<List<FanWay>> all = new ArrayList<>();
    long steps = 0;
    for (int h = 0; types.size() > 0 && h < pile.heads().size(); h++) {
      ways.add(new FanWays(pile, types, h, fans));
      all.add(ways.get(h).all(types.count));
      steps += ways.get(h).work() / WORK;
    }
    FanFloor floors = new FanFloor(pile, types, all, ways);
    Pile.Cost floor = types.size() == 0 ? null : floors.cost();
    if (floor == null) {
      return none(false, Pile.Cost.NONE, steps);
    }
    FanQuick quick = new FanQuick(pile, types, ways, floors, limit);
    FanDraft best = quick(quick, new FanHand(pile, types, ways).find(), floor);
    steps += quick.steps();
    return best == null
        ? none(false, Pile.Cost.NONE, steps)
        : answer(types, best, floor, best.cost().equals(floor), steps).over(floor);
  }

  private static PileTypes types(FanPile pile) {
    return new PileTypes(new Pile(pile.pieces(), List.of()));
  }

  private static FanDraft quick(FanQuick quick, FanDraft hand, Pile.Cost floor) {
    FanDraft best = hand;
    for (List<Integer> order : orders(quick.heads())) {
      if (best == null || best.cost().compareTo(floor) > 0) {
        FanDraft other = quick.find(order);
        best = other != null && other.betterThan(best) ? other : best;
      }
    }
    return best;
  }

  private static FanPile.Answer answer(
      PileTypes types, FanDraft best, Pile.Cost bound, boolean proved, long steps) {
    List<Pile.Chosen> chosen = new PileDraft(best.heads(), best.cost()).chosen(types);
    Pile.Answer stones = new Pile.Answer(chosen, best.cost(), bound, proved, steps);
    return new FanPile.Answer(best.fans(), stones, bound);
  }

  private static FanPile.Answer none(boolean proved, Pile.Cost bound, long steps) {
    Pile.Answer none = new Pile.Answer(List.of(), null, bound, proved, steps);
    return new FanPile.Answer(List.of(), none, bound);
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

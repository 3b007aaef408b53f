package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileTypes;
import java.util.ArrayList;
import java.util.List;

/**
 * Chooses the stones of heads of which some are fans from one pile: least length sawn off, then
 * sides most alike where they are to be, then bearings nearest their target.
 *
 * <p>A floor under the cost comes from {@link FanReach}, a first choice from a quick hand and from
 * searches aimed at single ends; what meets the floor is proved best. Else a complete search goes
 * on until it has seen all or its steps are used up.
 */
public final class FanSolver {
  /** Extents worked out for a step. */
  public static final int WORK = 150;

  private FanSolver() {}

  /**
   * Solves.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   */
  public static FanPile.Answer solve(FanPile pile, long limit) {
    PileTypes types = new PileTypes(new Pile(pile.pieces(), List.of()));
    if (types.size() == 0) {
      return none(true, Pile.Cost.NONE, 0);
    }
    List<FanStore> stores = new ArrayList<>();
    List<FanWays> ways = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      FanStore store = new FanStore(pile.heads().get(h), types, h);
      stores.add(store);
      ways.add(new FanWays(pile.heads().get(h), store, h, Integer.MAX_VALUE));
    }
    FanCase one = new FanCase(() -> pile, ways, stores, List.of(), Pile.Cost.NONE);
    one.pile();
    Pile.Cost floor = one.floor();
    long steps = stores.stream().mapToLong(FanStore::work).sum() / WORK;
    FanCase.Quick quick = one.quick(limit / 2, Integer.MAX_VALUE);
    steps += quick.steps();
    FanProof proof = new FanProof(List.of(one));
    proof.know(quick.draft(), one);
    proof.run(limit - steps);
    if (proof.best() == null) {
      proof.last(limit - steps);
    }
    steps += proof.steps();
    Pile.Cost bound = proof.complete() ? proof.floor() : floor;
    FanDraft best = proof.best();
    if (best == null) {
      boolean none = bound.compareTo(Pile.Cost.ANY) >= 0;
      return none(none, none ? Pile.Cost.NONE : bound, steps);
    }
    boolean proved = best.cost().compareTo(bound) <= 0;
    return one.answer(best, proved ? best.cost() : bound, proved, steps).over(floor);
  }

  private static FanPile.Answer none(boolean proved, Pile.Cost bound, long steps) {
    Pile.Answer none = new Pile.Answer(List.of(), null, bound, proved, steps);
    return new FanPile.Answer(List.of(), none, bound);
  }
}

package headcourse.stock.pile;

import java.util.ArrayList;
import java.util.List;

/**
 * Chooses the stones of heads from a pile of measured pieces: least length sawn off, then sides
 * most alike where they are to be, then bearings nearest their target.
 *
 * <p>{@link WholePairs} finds what most piles come to: nothing sawn off, every stone with a
 * partner. Where that does not settle it, {@link LevelSearch} settles one part of the cost after
 * the other. Where it is left in doubt over the order of some stones, a plain complete search takes
 * the steps that are left.
 */
public final class PileSolver {
  /** What a choice that is soon found may take, in steps. */
  private static final long SOON = 4_000;

  private PileSolver() {}

  /**
   * Solves.
   *
   * @param pile pieces and heads
   * @param limit how many steps it may take
   */
  public static Pile.Answer solve(Pile pile, long limit) {
    return solve(pile, null, limit);
  }

  /**
   * Looks for a choice that costs less than what is known already.
   *
   * @param pile pieces and heads
   * @param beat what it must cost less than, or null
   * @param limit how many steps it may take
   */
  public static Pile.Answer solve(Pile pile, Pile.Cost beat, long limit) {
    PileTypes types = new PileTypes(pile);
    if (types.size() == 0 || pile.heads().isEmpty()) {
      boolean nothing = pile.heads().isEmpty();
      return new Pile.Answer(List.of(), nothing ? Pile.Cost.NONE : null, Pile.Cost.NONE, true, 0);
    }
    WholePairs pairs = new WholePairs(pile, types, limit / 8);
    if (beat != null && beat.sawn() == 0) {
      pairs.within(beat.imbalance());
    }
    pairs.run();
    if (pairs.proved()) {
      Pile.Cost cost = pairs.best().cost();
      boolean less = beat == null || cost.compareTo(beat) < 0;
      List<Pile.Chosen> chosen = less ? pairs.best().chosen(types) : List.of();
      return new Pile.Answer(chosen, less ? cost : null, cost, true, pairs.steps());
    }
    PileDraft known = beat == null ? null : new PileDraft(List.of(), beat);
    PileDraft start = better(pairs.best(), known);
    LevelSearch levels =
        new LevelSearch(
            trimmed(pile, types), types, start, (limit - pairs.steps()) * 7 / 8, Effort.USUAL);
    levels.run();
    levels.polish((limit - pairs.steps() - levels.steps()) * 3 / 4);
    PileDraft best = levels.best();
    boolean proved = levels.proved();
    long steps = pairs.steps() + levels.steps();
    if (!proved) {
      best = better(new PileHand(pile, types).find(), best);
      PileSearch search = new PileSearch(pile, types, best, levels.floor(), limit - steps);
      proved = search.run();
      best = search.best();
      steps += search.steps();
    }
    boolean none = best == null || best == known;
    return new Pile.Answer(
        none ? List.of() : mixed(pile, best).chosen(types),
        none ? null : best.cost(),
        proved && best != null ? best.cost() : levels.floor(),
        proved,
        steps);
  }

  /** Some choice soon found, the best or not. */
  public static Pile.Answer any(Pile pile) {
    PileTypes types = new PileTypes(pile);
    PileDraft found = null;
    if (types.size() > 0 && PileSupply.suffices(pile, types)) {
      found = new PileHand(pile, types).find();
      if (found == null) {
        // What is found first costs little enough.
        PileSearch search = new PileSearch(pile, types, null, Pile.Cost.ANY, SOON);
        search.run();
        found = search.best();
      }
    }
    return new Pile.Answer(
        found == null ? List.of() : found.chosen(types),
        found == null ? null : found.cost(),
        Pile.Cost.NONE,
        false,
        0);
  }

  private static PileDraft better(PileDraft one, PileDraft other) {
    return one != null && (other == null || one.cost().compareTo(other.cost()) < 0) ? one : other;
  }

  private static PileDraft mixed(Pile pile, PileDraft draft) {
    List<List<List<PileDraft.Slot>>> heads = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      heads.add(StoneOrder.mixed(pile.heads().get(h), draft.heads().get(h), h + 1L));
    }
    return new PileDraft(heads, draft.cost());
  }

  /** No stone is wider than the longest piece. */
  private static Pile trimmed(Pile pile, PileTypes types) {
    long longest = types.usable[types.size() - 1];
    List<Pile.Head> heads =
        pile.heads().stream().map(h -> h.max() <= longest ? h : h.upTo(longest)).toList();
    return new Pile(pile.pieces(), heads);
  }
}

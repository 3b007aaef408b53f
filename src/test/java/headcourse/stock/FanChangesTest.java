package headcourse.stock;

import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.ChangeProblem.Row;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.ChangeProblem.Stone;
import headcourse.stock.fan.FanPile;
import headcourse.stock.fan.FanSolver;
import headcourse.stock.fan.PlainFan;
import headcourse.stock.fan.RandomFan;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The fewest changes where heads are fans, held against all choices on small piles. */
class FanChangesTest {
  private static final int RUNS = Seeds.of(120);

  /** The pile as it was chosen from, then without some pieces, in some with the first stone cut. */
  private static ChangeProblem changed(FanPile pile, FanPile.Answer plan, Random r) {
    Set<Integer> gone = new TreeSet<>();
    for (int n = r.nextInt(3); n > 0; n--) {
      gone.add(r.nextInt(pile.pieces().size()));
    }
    List<ChangeProblem.Piece> pieces = new ArrayList<>();
    int[] place = new int[pile.pieces().size()];
    for (int i = 0; i < place.length; i++) {
      Pile.Piece p = pile.pieces().get(i);
      place[i] = gone.contains(i) ? -1 : pieces.size();
      if (place[i] >= 0) {
        boolean[] fits = new boolean[p.fits().size()];
        for (int h = 0; h < fits.length; h++) {
          fits[h] = p.fits().get(h);
        }
        pieces.add(new ChangeProblem.Piece(p.id(), p.usable(), fits, new boolean[fits.length]));
      }
    }
    List<Rows> heads = new ArrayList<>();
    for (int h = 0; h < pile.heads().size(); h++) {
      FanPile.Head head = pile.heads().get(h);
      FanPile.Fan fan = head.fans().get(plan.fans().get(h));
      Pile.Chosen c = plan.stones().heads().get(h);
      Row left = row(head, fan.left(), c.left(), place, r);
      Row right = row(head, fan.right(), c.right(), place, r);
      heads.add(
          new Rows(
              head.copies(),
              head.mirror(),
              head.min(),
              head.max(),
              head.jump(),
              null,
              left,
              right));
    }
    return new ChangeProblem(pieces, heads, false);
  }

  private static Row row(
      FanPile.Head head, PileSide of, List<Pile.Picked> plan, int[] place, Random r) {
    PlainFan side = (PlainFan) of;
    boolean cut = plan.size() > 1 && r.nextInt(2) == 0;
    long off = cut ? r.nextInt(3) - 1 : 0;
    List<Long> there = new ArrayList<>();
    List<Stone> before = new ArrayList<>();
    long foot = side.start();
    for (int i = 0; i < plan.size(); i++) {
      Pile.Picked p = plan.get(i);
      foot += side.joint() + p.width();
      if (cut && i == 0) {
        there.add(p.width() + off);
        continue;
      }
      int[] pieces = p.pieces().stream().mapToInt(k -> place[k]).toArray();
      // Beyond a stone that came out otherwise the next has another edge.
      long stood = cut && i == 1 && off != 0 ? Long.MIN_VALUE : foot;
      before.add(new Stone(p.width(), pieces, stood, false));
    }
    PlainFan rest = cut ? side.from(side.start() + side.joint() + plan.get(0).width() + off) : side;
    int each = head.eachSide() == 0 ? 0 : head.eachSide() - there.size();
    return new Row(rest, false, each, there, before);
  }

  @Test
  void fewestAndCheapestOfAll() {
    int compared = 0;
    int several = 0;
    int none = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      FanPile pile = RandomFan.small(seed);
      FanPile.Answer plan = FanSolver.solve(pile, 200_000);
      if (plan.fans().isEmpty()) {
        continue;
      }
      ChangeProblem problem = changed(pile, plan, new Random(seed));
      int changes = ChangeBrute.agrees(problem, "seed " + seed);
      compared++;
      none += changes == Integer.MAX_VALUE ? 1 : 0;
      several += changes > 1 && changes < Integer.MAX_VALUE ? 1 : 0;
    }
    assertTrue(
        compared > RUNS / 3 && several > 1 && none < compared * 2 / 3,
        compared + " compared, " + several + " with several, " + none + " with none");
  }
}

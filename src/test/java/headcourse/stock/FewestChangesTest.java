package headcourse.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.stock.ChangeProblem.Row;
import headcourse.stock.ChangeProblem.Rows;
import headcourse.stock.ChangeProblem.Stone;
import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import headcourse.stock.pile.PileSolver;
import headcourse.stock.pile.PlainSide;
import headcourse.stock.pile.RandomPile;
import headcourse.testing.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The fewest changes to what was ticketed, held against all choices on small piles. */
class FewestChangesTest {
  private static final int RUNS = Seeds.of(80);

  /** A pile as it was chosen from, and then without some pieces, with some stones cut. */
  private static ChangeProblem spoiled(Pile pile, Pile.Answer plan, Random r) {
    Set<Integer> gone = new TreeSet<>();
    for (int n = 1 + r.nextInt(3) / 2; n > 0; n--) {
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
      Pile.Head head = pile.heads().get(h);
      Pile.Chosen c = plan.heads().get(h);
      List<Row> rows = new ArrayList<>();
      for (int s = 0; s < 2; s++) {
        rows.add(row(head, s, s == 0 ? c.left() : c.right(), place, r));
      }
      heads.add(
          new Rows(
              head.copies(),
              head.mirror(),
              head.min(),
              head.max(),
              head.jump(),
              null,
              rows.get(0),
              rows.get(1)));
    }
    return new ChangeProblem(pieces, heads, false);
  }

  /** Now and then the first stone came out a tick off, so that all beyond it stands elsewhere. */
  private static Row row(Pile.Head head, int s, List<Pile.Picked> plan, int[] place, Random r) {
    PlainSide side = (PlainSide) head.side(s);
    boolean cut = plan.size() > 1 && r.nextInt(3) == 0;
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
      int[] of = p.pieces().stream().mapToInt(k -> place[k]).toArray();
      before.add(new Stone(p.width(), of, foot, false));
    }
    PileSide rest = side;
    if (cut) {
      long start = side.start() + side.joint() + plan.get(0).width() + off;
      rest =
          new PlainSide(
              start,
              side.joint(),
              side.jamb(),
              side.clear(),
              side.bearingMin(),
              side.bearingMax(),
              side.target());
    }
    int each = head.eachSide() == 0 ? 0 : head.eachSide() - there.size();
    return new Row(rest, false, each, there, before);
  }

  @Test
  void fewestAndCheapestOfAll() {
    int compared = 0;
    int several = 0;
    int none = 0;
    for (long seed = 0; seed < RUNS; seed++) {
      Pile pile = RandomPile.small(seed);
      Pile.Answer plan = PileSolver.solve(pile, 200_000);
      if (plan.heads().isEmpty()) {
        continue;
      }
      ChangeProblem problem = spoiled(pile, plan, new Random(seed));
      int changes = ChangeBrute.agrees(problem, "seed " + seed);
      compared++;
      none += changes == Integer.MAX_VALUE ? 1 : 0;
      several += changes > 1 && changes < Integer.MAX_VALUE ? 1 : 0;
    }
    assertTrue(
        compared > RUNS / 2 && several > 1 && none < compared / 2,
        compared + " compared, " + several + " with several, " + none + " with none");
  }

  /** Sixty pieces, twenty-four stones: any one of them spoiled. */
  @Test
  void largePilesAreProved() {
    int proved = 0;
    int all = 0;
    for (long seed = 0; seed < Seeds.of(6); seed++) {
      Pile pile = RandomPile.large(seed, 60, 12, true);
      Pile.Answer plan = PileSolver.solve(pile, 2_000_000);
      Random r = new Random(seed);
      for (int n = 0; n < 2; n++) {
        List<Pile.Picked> row = plan.heads().get(0).left();
        Pile.Picked lost = row.get(r.nextInt(row.size()));
        FewestChanges.Result f =
            new FewestChanges(
                    List.of(without(pile, plan, lost.pieces().get(0))),
                    Integer.MAX_VALUE,
                    2_000_000)
                .solve();
        all++;
        proved += f.proved() ? 1 : 0;
        assertTrue(f.found() != null && f.least() <= f.found().changes(), "seed " + seed);
      }
    }
    assertEquals(all, proved);
  }

  private static ChangeProblem without(Pile pile, Pile.Answer plan, int lost) {
    List<ChangeProblem.Piece> pieces = new ArrayList<>();
    int[] place = new int[pile.pieces().size()];
    for (int i = 0; i < place.length; i++) {
      place[i] = i == lost ? -1 : pieces.size();
      if (i != lost) {
        Pile.Piece p = pile.pieces().get(i);
        pieces.add(
            new ChangeProblem.Piece(
                p.id(), p.usable(), new boolean[] {true}, new boolean[] {false}));
      }
    }
    Pile.Head head = pile.heads().get(0);
    Random whole =
        new Random(1) {
          @Override
          public int nextInt(int bound) {
            return 1;
          }
        };
    Pile.Chosen c = plan.heads().get(0);
    return new ChangeProblem(
        pieces,
        List.of(
            new Rows(
                1,
                head.mirror(),
                head.min(),
                head.max(),
                head.jump(),
                null,
                row(head, 0, c.left(), place, whole),
                row(head, 1, c.right(), place, whole))),
        false);
  }
}

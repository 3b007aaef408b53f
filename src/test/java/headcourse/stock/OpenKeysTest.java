package headcourse.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatShape;
import headcourse.layout.shapes.Shapes;
import headcourse.stock.PileReader.Lying;
import headcourse.stock.fan.FanBrute;
import headcourse.stock.fan.FanPile;
import headcourse.stock.pile.Pile;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Keys whose width is left open, in one head or two, against every key and choice there is. */
class OpenKeysTest {
  private static final int JOBS = Seeds.of(40);

  private static Length in(double v) {
    return Length.inches(v);
  }

  /** Half an inch is a tick, so that every choice can be tried. */
  private static JobMaker random(long seed) {
    Random r = new Random(seed);
    JobMaker m = JobMaker.one();
    m.tick = in(0.5);
    m.openings.clear();
    int heads = 1 + r.nextInt(2);
    for (int h = 0; h < heads; h++) {
      JobMaker.OpeningMaker o = new JobMaker.OpeningMaker();
      o.mark = "D" + (h + 1);
      o.rhythm = HeadSpec.Rhythm.FROM_STOCK;
      o.mirror = r.nextInt(3) > 0;
      o.width = in(9 + r.nextInt(heads == 1 ? 9 : 5));
      o.headHeight = in(6);
      o.min = in(4);
      o.max = in(6);
      o.target = in(5);
      o.clear = in(0.5 * r.nextInt(2));
      o.bearing = new HeadSpec.Bearing(in(1), in(2 + r.nextInt(2)), in(1.5));
      boolean open = h == 0 || r.nextInt(3) > 0;
      o.key = new HeadSpec.Key(open ? null : in(5), null, in(0), in(0), in(0));
      if (r.nextInt(2) == 0) {
        o.shape = "jack";
        o.params.put(
            r.nextBoolean() ? "skewback" : "striking",
            r.nextBoolean() ? Angle.degrees(70) : in(24));
        if (o.params.get("skewback") instanceof Length
            || o.params.get("striking") instanceof Angle) {
          o.params.clear();
        }
        if (r.nextInt(3) == 0) {
          o.params.put("camber", in(0.5));
        }
      } else if (!open) {
        o.key = new HeadSpec.Key(in(5), in(5), in(0), in(0), in(0));
      }
      m.openings.add(o);
    }
    List<Stock.Item> items = new ArrayList<>();
    int pieces = heads == 1 ? 6 + r.nextInt(3) : 6 + r.nextInt(2);
    for (int i = 1; i <= pieces; i++) {
      items.add(FromStockTest.piece("C" + i, 4.25 + r.nextInt(9) / 2.0, 7));
    }
    m.stock = new Stock(items, 0.1);
    return m;
  }

  @Test
  void costEqualsTheLeastOfAllKeysAndChoices() {
    int solved = 0;
    int two = 0;
    for (long seed = 0; seed < JOBS; seed++) {
      Job job = random(seed).make();
      Function<Opening, FlatReading> read =
          o -> ((FlatShape) Shapes.named(o.head().shape()).orElseThrow()).read(job, o);
      KeySearch search = new KeySearch(job, job.openings(), read);
      Optional<KeyedPile> ours = search.best(Set.of());
      Pile.Cost least = new Brute(job, read).least();
      Pile.Cost cost = ours.map(k -> k.answer().cost()).orElse(null);
      assertEquals(least, cost, "seed " + seed);
      assertTrue(search.ruledOut(), "seed " + seed);
      assertTrue(ours.isEmpty() || ours.get().answer().proved(), "seed " + seed);
      solved += cost == null ? 0 : 1;
      two += cost == null || job.openings().size() == 1 ? 0 : 1;
    }
    assertTrue(solved > JOBS / 4 && two > JOBS / 20, solved + ", of two heads " + two);
  }

  /** Fewer steps: what is said to be proved is so, and the bound holds. */
  @Test
  void provedIsNeverSaidWhereNotAllWasLookedAt() {
    for (long seed = 0; seed < JOBS; seed++) {
      JobMaker m = random(seed);
      m.steps = 5_000;
      Job job = m.make();
      Function<Opening, FlatReading> read =
          o -> ((FlatShape) Shapes.named(o.head().shape()).orElseThrow()).read(job, o);
      KeySearch search = new KeySearch(job, job.openings(), read);
      Optional<KeyedPile> few = search.best(Set.of());
      Pile.Cost least = new Brute(job, read).least();
      if (few.isEmpty()) {
        assertTrue(!search.ruledOut() || least == null, "seed " + seed);
      } else {
        Pile.Answer a = few.get().answer();
        assertTrue(a.bound().compareTo(least) <= 0, "seed " + seed);
        assertTrue(!a.proved() || a.cost().equals(least), "seed " + seed);
      }
    }
  }

  /** Every piece as a key, head after head, and then every choice of stones. */
  private static final class Brute {
    private final Job job;
    private final Function<Opening, FlatReading> read;
    private final PileReader yard;
    private Pile.Cost best;

    Brute(Job job, Function<Opening, FlatReading> read) {
      this.job = job;
      this.read = read;
      this.yard = new PileReader(job);
    }

    Pile.Cost least() {
      keys(0, new HashSet<>(), new FanPile.Head[job.openings().size()]);
      return best;
    }

    /** Keys whose widths are given take their pieces first. */
    private int next(int settled) {
      List<Integer> given = new ArrayList<>();
      List<Integer> open = new ArrayList<>();
      for (int h = 0; h < job.openings().size(); h++) {
        (KeySearch.open(job.openings().get(h)) ? open : given).add(h);
      }
      given.addAll(open);
      return given.get(settled);
    }

    private void keys(int settled, Set<String> gone, FanPile.Head[] heads) {
      if (settled == heads.length) {
        List<Pile.Piece> pieces = new ArrayList<>();
        for (Lying p : yard.pieces(gone)) {
          List<Boolean> fits =
              job.openings().stream().map(o -> yard.fits(p.item(), o, false)).toList();
          pieces.add(new Pile.Piece(p.id(), p.usable(), fits));
        }
        Pile.Cost one = new FanBrute(new FanPile(pieces, List.of(heads))).least();
        best = one != null && (best == null || one.compareTo(best) < 0) ? one : best;
        return;
      }
      int h = next(settled);
      for (FanKeys.Keyed k :
          new FanKeys(job, job.openings().get(h), job.openings(), read).of(yard.pieces(gone))) {
        Set<String> less = new HashSet<>(gone);
        k.pieces().forEach(p -> less.add(p.id()));
        heads[h] = FanSettled.head(job.openings().get(h), k);
        keys(settled + 1, less, heads);
      }
    }
  }
}

package headcourse.layout.yard;

import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.job.Stock;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatShape;
import headcourse.layout.shapes.Shapes;
import headcourse.layout.yard.rows.Agreement;
import headcourse.layout.yard.rows.Pile;
import headcourse.testing.JobMaker;
import headcourse.testing.Seeds;
import headcourse.units.Angle;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Keys whose width is left open, in one head or two, against every key and choice there is. */
class OpenKeysTest {
  private static final int JOBS = Seeds.of(12);

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

  private static Pile pile(Job job) {
    Function<Opening, FlatReading> read =
        o -> ((FlatShape) Shapes.named(o.head().shape()).orElseThrow()).read(job, o);
    List<List<Site>> sites = new Sites(job, job.openings(), read, List.of()).anew(null, Set.of());
    return sites.stream().anyMatch(List::isEmpty)
        ? null
        : new YardModel(job, null, sites, Set.of(), Set.of()).pile();
  }

  @Test
  void costEqualsTheLeastOfAllKeysAndChoices() {
    int solved = 0;
    int two = 0;
    for (long seed = 0; seed < JOBS; seed++) {
      Pile pile = pile(random(seed).make());
      boolean found = pile != null && Agreement.withBrute(pile, "seed " + seed);
      solved += found ? 1 : 0;
      two += found && pile.heads().size() > 1 ? 1 : 0;
    }
    assertTrue(solved > JOBS / 4 && two > JOBS / 20, solved + ", of two heads " + two);
  }
}

package headcourse.layout.yard;

import static headcourse.layout.yard.FanFittedTest.outwards;
import static headcourse.layout.yard.FittedChecker.choose;
import static headcourse.layout.yard.FittedChecker.fitted;
import static headcourse.layout.yard.FittedChecker.heads;
import static headcourse.layout.yard.FittedChecker.holds;
import static headcourse.layout.yard.FittedChecker.taken;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Fitted;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.testing.JobMaker;
import headcourse.units.Angle;
import headcourse.work.CureCheck;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What befalls single stones and pieces of a jack arch set from a pile. */
class FanMishapsTest {
  private static JobMaker skewed() {
    JobMaker m = FanStockTest.plenty();
    m.first().params.clear();
    m.first().params.put("skewback", Angle.degrees(72));
    return m;
  }

  private static void only(JobMaker m, Set<String> marks) {
    List<Stock.Item> items = new ArrayList<>(m.stock.items());
    items.removeIf(i -> !marks.contains(i.mark() + "#1"));
    m.stock = new Stock(items, 0.1);
  }

  private static String said(FromStock chosen) {
    return heads(chosen).get(0).remarks().stream()
        .filter(r -> r.key().equals("from-stock"))
        .map(HeadLayout.Remark::message)
        .findFirst()
        .orElseThrow();
  }

  /** Only the pieces of a plan but for one, whose stone is cut from elsewhere. */
  private static void aroundAStoneFromElsewhere(JobMaker m, JobMaker again) {
    FromStock before = choose(m);
    HeadLayout h = heads(before).get(0);
    Set<String> pieces = new TreeSet<>();
    before.taken().forEach(t -> pieces.add(t.piece()));
    pieces.remove(taken(before).get("D1-L1 1").piece());
    only(again, pieces);
    assertTrue(heads(choose(again)).isEmpty());
    PlacedStone l1 = h.stone("L1");
    again.fitted.add(
        new Fitted("fitted.D1.L1", "D1", "L1", l1.bottom(), l1.top(), null, Fitted.NO_PIECE));
    FromStock now = choose(again);
    assertEquals(1, heads(now).size());
    assertTrue(heads(now).get(0).stone("L1").fitted());
    assertTrue(!taken(now).containsKey("D1-L1 1"));
    holds(again, now, "elsewhere");
  }

  @Test
  void whatCouldNotBePlannedMayGoOnAroundAStone() {
    aroundAStoneFromElsewhere(FanStockTest.plenty(), FanStockTest.plenty());
  }

  @Test
  void theSameWhereTheStrikingPointFollowsTheEnd() {
    aroundAStoneFromElsewhere(skewed(), skewed());
  }

  /** Where the depth of the striking point is given, the fewest changes are proved. */
  @Test
  void aGivenStrikingPointIsProved() {
    FromStock before = choose(FanStockTest.plenty());
    HeadLayout h = heads(before).get(0);
    JobMaker m = FanStockTest.plenty();
    m.fitted.add(fitted(h, h.stone("L2"), 3, m.tick));
    FromStock now = choose(m);
    assertEquals(Proof.Status.OPTIMAL, heads(now).get(0).proof().status());
    assertTrue(
        said(now).contains("1 stone otherwise than ticketed first, fewer were not possible;"));
    assertEquals(
        List.of("L3"), heads(now).get(0).asBuilt().changes().stream().map(c -> c.mark()).toList());
    holds(m, now, "given");
  }

  /** Where it follows the end, other points were not tried, and nothing more is claimed. */
  @Test
  void aPointThatFollowsTheEndIsNot() {
    FromStock before = choose(skewed());
    HeadLayout h = heads(before).get(0);
    JobMaker m = skewed();
    m.fitted.add(fitted(h, h.stone("L2"), 3, m.tick));
    FromStock now = choose(m);
    assertEquals(h.curve().striking(), heads(now).get(0).curve().striking(), 0);
    assertEquals(Proof.Status.BOUNDED, heads(now).get(0).proof().status());
    assertTrue(said(now).endsWith("; better was not ruled out"), said(now));
    holds(m, now, "follows");
  }

  /** No piece is left that holds the stone whose piece broke: as few as can be are cut anew. */
  @Test
  void noPieceOfTheSameSizeIsLeft() {
    JobMaker m = FanStockTest.plenty();
    String lost = null;
    for (int size = 0; size != m.stock.items().size(); ) {
      size = m.stock.items().size();
      FromStock before = choose(m);
      FromStock.Taken longest =
          before.taken().stream()
              .filter(t -> !t.stone().endsWith("-K"))
              .max(Comparator.comparingLong(FromStock.Taken::extent))
              .orElseThrow();
      // Pieces that would hold it and are not used go, until none is left.
      Set<String> rest = new TreeSet<>();
      before.taken().forEach(t -> rest.add(t.piece()));
      for (Stock.Item i : m.stock.items()) {
        if (i.length().mm() < longest.extent() * m.make().grid().tick().mm()) {
          rest.add(i.mark() + "#1");
        }
      }
      only(m, rest);
      lost = longest.piece();
    }
    m.spoiled.add(lost);
    FromStock now = choose(m);
    assertEquals(1, heads(now).size());
    assertTrue(now.taken().stream().noneMatch(t -> t.piece().equals(m.spoiled.get(0))));
    holds(m, now, "spoiled");
    assertTrue(said(now).contains("otherwise than ticketed first"), said(now));
  }

  /** The piece that the job names is gone; the stone planned from it gets another. */
  @Test
  void thePieceThatTheJobNames() {
    FromStock before = choose(FanStockTest.plenty());
    String other = taken(before).get("D1-L3 1").piece();
    HeadLayout h = heads(before).get(0);
    PlacedStone l1 = h.stone("L1");
    JobMaker m = FanStockTest.plenty();
    m.fitted.add(new Fitted("fitted.D1.L1", "D1", "L1", l1.bottom(), null, null, other));
    FromStock now = choose(m);
    assertEquals(other, taken(now).get("D1-L1 1").piece());
    assertTrue(!taken(now).get("D1-L3 1").piece().equals(other));
    assertEquals(2, now.changes().size());
    assertEquals(h.joints(), heads(now).get(0).joints());
    holds(m, now, "named");
  }

  /** All of the left side is cut, its end stone so wide that it bears too far: recut it. */
  @Test
  void namesWhatToRecut() {
    FromStock before = choose(FanStockTest.plenty());
    HeadLayout h = heads(before).get(0);
    JobMaker m = FanStockTest.plenty();
    for (PlacedStone s : outwards(h, Side.LEFT)) {
      m.fitted.add(fitted(h, s, s.role() == Role.END ? 64 : 0, m.tick));
    }
    Solution.Refused no = (Solution.Refused) choose(m).solutions().get(0);
    assertTrue(no.problems().get(0).message().contains("around the stones that are cut"));
    CureCheck check = new CureCheck().of(m, "end stone");
    assertEquals(List.of(), check.failed);
    assertEquals(1, check.helped);
  }
}

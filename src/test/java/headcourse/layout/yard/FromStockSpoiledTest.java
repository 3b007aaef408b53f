package headcourse.layout.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Proof;
import headcourse.layout.Side;
import headcourse.stock.StockPlan;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pieces of a pile that break when their stones are ticketed. */
class FromStockSpoiledTest {
  private static JobMaker maker(double... keys) {
    return maker(6, keys);
  }

  private static JobMaker maker(long seed, double[] keys) {
    JobMaker m = FromStockTest.maker(seed, 40, 8.5);
    List<Stock.Item> items = new ArrayList<>(m.stock.items());
    items.removeIf(i -> i.mark().equals("K1"));
    for (int k = 0; k < keys.length; k++) {
      items.add(FromStockTest.piece("K" + (k + 1), keys[k], 14));
    }
    m.stock = new Stock(items, 0.1);
    // Ordinary pieces are 13 in high; the key stands higher.
    m.first().key =
        new HeadSpec.Key(
            Length.inches(10), Length.inches(10), Length.inches(2), Length.ZERO, Length.ZERO);
    return m;
  }

  private static FromStockTest.Worked spoiled(JobMaker m, String... pieces) {
    m.spoiled.addAll(List.of(pieces));
    return FromStockTest.work(m);
  }

  private static HeadLayout head(FromStockTest.Worked w) {
    return w.heads().get(0).layout();
  }

  @Test
  void aKeyIsCutToItsSizeFromAnotherPiece() {
    FromStockTest.Worked w = spoiled(maker(10.25, 10.5), "K1#1");
    assertEquals(1, w.plan().changes().size());
    assertEquals("K2#1", w.plan().blanksOf("D1-K").get(0).id());
    assertEquals(head(FromStockTest.work(maker(10.25, 10.5))).joints(), head(w).joints());
    assertEquals(List.of(), head(w).asBuilt().changes());
  }

  @Test
  void aKeyThatTheYardHasNotGotAnyMoreIsOrdered() {
    FromStockTest.Worked w = spoiled(maker(10.25, 9.5), "K1#1");
    assertEquals(List.of(""), w.plan().changes().stream().map(StockPlan.Moved::to).toList());
    assertEquals("D1-K", w.plan().unfit().get(0).stone());
    assertEquals(head(FromStockTest.work(maker(10.25, 9.5))).joints(), head(w).joints());
  }

  /** Its width was left open: the next key is narrower, and all stones stand nearer by half. */
  @Test
  void anOpenKeyTakesTheWidthOfAnotherPiece() {
    int narrower = 0;
    for (long seed = 1; seed < 12 && narrower == 0; seed++) {
      HeadLayout before = head(FromStockTest.work(openKey(seed)));
      if (!before.stone("K").bottom().equals(Length.inches(8))) {
        continue;
      }
      HeadLayout now = head(spoiled(openKey(seed), "K1#1"));
      if (now.stone("K").bottom().equals(Length.inches(7.75))
          && now.stones().size() == before.stones().size()) {
        narrower++;
        for (PlacedStone s : now.stones()) {
          Length was = before.stone(s.mark()).bottom();
          assertEquals(s.mark().equals("K") ? Length.inches(7.75) : was, s.bottom(), s.mark());
        }
        assertEquals(
            before.bearing(Side.LEFT).onWall().minus(Length.inches(1 / 8.0)),
            now.bearing(Side.LEFT).onWall());
        assertTrue(
            now.remarks().stream()
                .anyMatch(r -> r.message().contains("1 stone otherwise than ticketed first, few")));
      }
    }
    assertEquals(1, narrower);
  }

  /** Two keys to choose from, of which only these are high enough. */
  private static JobMaker openKey(long seed) {
    JobMaker m = maker(seed, new double[] {8.25, 8});
    m.first().key = new HeadSpec.Key(null, null, Length.inches(2), Length.ZERO, Length.ZERO);
    m.first().mirror = false;
    return m;
  }

  @Test
  void ofTwoAlikeOnlyTheOneThatBrokeIsCutAnew() {
    JobMaker m = maker();
    List<Stock.Item> items = new ArrayList<>();
    for (int i = 0; i < 26; i++) {
      items.add(FromStockTest.piece("A" + i, 6 + i / 4 * 0.25, 13));
    }
    items.add(FromStockTest.piece("K1", 10.25, 14));
    items.add(FromStockTest.piece("K2", 10.25, 14));
    m.stock = new Stock(items, 0.1);
    m.first().count = 2;
    m.first().width = Length.inches(30);
    FromStockTest.Worked before = FromStockTest.work(m);
    FromStock.Taken broken =
        before.chosen().taken().stream()
            .filter(t -> t.stone().equals("D1-L1") && t.copy() == 2)
            .findFirst()
            .orElseThrow();
    FromStockTest.Worked now = spoiled(m, broken.piece());
    assertEquals(1, now.chosen().changes().size());
    assertEquals("D1-L1", now.chosen().changes().get(0).stone());
    assertEquals(head(before).joints(), head(now).joints());
  }

  /** The other door's key is the only piece that will do, and that door has a third piece. */
  @Test
  void twoKeysChangePlaces() {
    JobMaker m = JobMaker.one();
    List<Stock.Item> items = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      items.add(FromStockTest.piece("A" + i, 7.25, 13));
    }
    items.add(FromStockTest.piece("K1", 14.25, 14));
    items.add(FromStockTest.piece("K2", 10.25, 14));
    items.add(FromStockTest.piece("K3", 5.25, 14));
    m.stock = new Stock(items, 0.1);
    JobMaker.OpeningMaker other = new JobMaker.OpeningMaker();
    other.mark = "D2";
    m.openings.add(other);
    for (JobMaker.OpeningMaker o : m.openings) {
      o.width = Length.inches(o == other ? 28 : 32);
      o.rhythm = HeadSpec.Rhythm.FROM_STOCK;
      o.bearing = new HeadSpec.Bearing(Length.inches(2), Length.inches(8), Length.inches(5));
      o.key = new HeadSpec.Key(null, null, Length.inches(2), Length.ZERO, Length.ZERO);
    }
    FromStockTest.Worked before = FromStockTest.work(m);
    assertEquals("K1#1", before.plan().blanksOf("D1-K").get(0).id());
    assertEquals("K2#1", before.plan().blanksOf("D2-K").get(0).id());
    FromStockTest.Worked now = spoiled(m, "K1#1");
    assertEquals("K2#1", now.plan().blanksOf("D1-K").get(0).id());
    assertEquals("K3#1", now.plan().blanksOf("D2-K").get(0).id());
    assertEquals(2, now.chosen().changes().size());
    assertEquals(Proof.Status.OPTIMAL, head(now).proof().status());
    assertTrue(
        head(now).remarks().stream()
            .anyMatch(
                r -> r.message().contains("2 stones otherwise than ticketed first, fewer were")));
  }

  /** Two one after the other: the second finds the tickets as the first left them. */
  @Test
  void oneAfterTheOther() {
    JobMaker m = maker(10.25);
    FromStockTest.Worked before = FromStockTest.work(m);
    String l2 = before.plan().blanksOf("D1-L2").get(0).id();
    FromStockTest.Worked first = spoiled(m, l2);
    String again = first.plan().blanksOf("D1-L2").get(0).id();
    FromStockTest.Worked second = spoiled(m, again);
    assertEquals(
        List.of(l2, again), second.plan().changes().stream().map(StockPlan.Moved::from).toList());
    assertTrue(
        second.plan().blanks().stream().noneMatch(b -> b.id().equals(l2) || b.id().equals(again)));
    assertEquals(head(before).joints(), head(second).joints());
  }
}

package headcourse.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The width of even stones follows the blanks: where none would be left over, or where asked. */
class BlanksPreferredTest {
  private static JobMaker job(double width, int corners) {
    JobMaker maker = JobMaker.one();
    maker.first().width = Length.inches(width);
    maker.first().min = Length.inches(5);
    maker.first().max = Length.inches(8.5);
    maker.stock =
        new Stock(
            List.of(
                new Stock.Item(
                    "stock.corners[0]",
                    "C1",
                    Stock.Kind.CORNER,
                    Length.inches(24),
                    Length.inches(14),
                    Length.inches(5),
                    maker.thickness,
                    corners,
                    false,
                    0)),
            0.1);
    return maker;
  }

  private static ShopWork work(JobMaker maker) {
    return WorkUp.of(maker.make()).value().orElseThrow();
  }

  private static long shortfall(ShopWork work) {
    return work.heads().get(0).layout().proof().shortfall().picometres();
  }

  /**
   * Sixteen feet four, bearing 3 to 4 in, twelve corners: stones of 8 in go two on a corner, so
   * some would have none; those of 6 15/16 in go three on each, and all have one.
   */
  @Test
  void stonesThatFitNoBlankAreNeverBestWhereANearWidthFits() {
    JobMaker maker = job(196, 12);
    maker.first().bearing =
        new HeadSpec.Bearing(Length.inches(3), Length.inches(4), Length.inches(3.5));
    for (double target : new double[] {8, 6 + 15 / 16.0}) {
      maker.first().target = Length.inches(target);
      ShopWork work = work(maker);
      assertEquals(List.of(), work.stock().unfit(), "target " + target);
      assertTrue(work.stock().whole() <= 12, "target " + target);
    }
  }

  /** No width that can be aimed at, and that lands as surely, is cut from fewer blanks. */
  @ParameterizedTest
  @ValueSource(doubles = {96, 121, 148})
  void fewestBlanks(double width) {
    JobMaker maker = job(width, 99);
    maker.first().target = Length.inches(8);
    int aimed = work(maker).stock().whole();
    maker.first().prefer = HeadSpec.Prefer.BLANKS;
    ShopWork preferred = work(maker);
    assertTrue(preferred.stock().whole() <= aimed);
    maker.first().prefer = HeadSpec.Prefer.TARGET;
    for (int eighths = 40; eighths <= 68; eighths++) {
      maker.first().target = Length.inches(eighths / 8.0);
      ShopWork other = work(maker);
      if (shortfall(other) <= shortfall(preferred)) {
        assertTrue(
            preferred.stock().whole() <= other.stock().whole(),
            width + ": fewer with a target of " + eighths + "/8 in");
      }
    }
  }

  /** A width that saves corners is taken where blanks are preferred, and not otherwise. */
  @Test
  void aNearWidthSavesCorners() {
    JobMaker maker = job(148, 99);
    maker.first().target = Length.inches(8);
    ShopWork aimed = work(maker);
    maker.first().prefer = HeadSpec.Prefer.BLANKS;
    ShopWork preferred = work(maker);
    assertTrue(
        preferred.stock().whole() < aimed.stock().whole(),
        preferred.stock().whole() + " of " + aimed.stock().whole());
    assertTrue(shortfall(preferred) <= shortfall(aimed));
  }
}

package headcourse.layout.curved;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where shapes become one another they give the same stones; by definition. */
class LimitShapesTest {
  private static JobMaker job(String shape, String extrados, Map<String, Object> params) {
    JobMaker m = CurvedJobs.of(shape, 72, 10);
    CurvedJobs.mortar(m, 0.25);
    m.first().params.putAll(params);
    m.first().params.put("extrados", extrados);
    m.first().params.put("course", Length.inches(7));
    return m;
  }

  private static HeadLayout head(String shape, String extrados, Map<String, Object> params) {
    return CurvedJobs.head(job(shape, extrados, params));
  }

  @ParameterizedTest
  @ValueSource(strings = {"concentric", "level", "stepped"})
  void allAreTheSemicircle(String extrados) {
    HeadLayout round = head("semicircular", extrados, Map.of());
    Map<String, Object> half = Map.of("rise", Length.inches(36));
    HeadAssert.same(round, head("segmental", extrados, half), 1e-9);
    HeadAssert.same(round, head("three-centred", extrados, half), 1e-9);
    HeadAssert.same(round, head("pointed", extrados, Map.of("radius", 0.5)), 1e-9);
    HeadAssert.same(
        round,
        head(
            "three-centred",
            extrados,
            Map.of("radius", Length.inches(36), "haunch-radius", Length.inches(36))),
        1e-9);
  }

  /** The parallel curve of an ellipse of equal axes is fitted by arcs, here of one circle. */
  @Test
  void ellipseOfEqualAxes() {
    HeadLayout round = head("semicircular", "level", Map.of());
    HeadAssert.same(round, head("elliptical", "level", Map.of("rise", Length.inches(36))), 1e-8);
    HeadLayout ring = head("semicircular", "concentric", Map.of());
    HeadLayout ellipse = head("elliptical", "concentric", Map.of("rise", Length.inches(36)));
    for (int i = 0; i < ring.stones().size(); i++) {
      PlacedStone a = ring.stones().get(i);
      PlacedStone b = ellipse.stones().get(i);
      assertEquals(a.outline().area(), b.outline().area(), 1e-6, a.mark());
      assertEquals(a.chordDeviation(), b.chordDeviation(), 1e-8, a.mark());
      assertEquals(a.top(), b.top(), a.mark());
    }
  }

  /** Close to the limit the shapes are close to it too. */
  @Test
  void nearTheLimit() {
    HeadLayout round = head("semicircular", "concentric", Map.of());
    HeadAssert.same(
        round, head("segmental", "concentric", Map.of("rise", Length.mm(914.4 - 1e-6))), 1e-4);
    HeadAssert.same(round, head("pointed", "concentric", Map.of("radius", 0.5 + 1e-12)), 2e-2);
    // Three centres still, so the soffits have more edges: their stones' corners are compared.
    HeadLayout basket =
        head("three-centred", "concentric", Map.of("rise", Length.mm(914.4 - 1e-3)));
    for (int i = 0; i < round.joints().size(); i++) {
      HeadAssert.same(round.joints().get(i).foot(), basket.joints().get(i).foot(), 1e-2);
      HeadAssert.same(round.joints().get(i).head(), basket.joints().get(i).head(), 1e-2);
    }
  }

  /** Given either way that a mason measures, the head is the same. */
  @Test
  void eitherMeasure() {
    HeadLayout byRise = head("segmental", "concentric", Map.of("rise", Length.inches(9)));
    Length radius = Length.mm(byRise.curve().radius());
    HeadAssert.same(byRise, head("segmental", "concentric", Map.of("radius", radius)), 1e-6);
    HeadLayout lancet = head("pointed", "concentric", Map.of("radius", 1.5));
    HeadAssert.same(lancet, head("pointed", "concentric", Map.of("rod", Length.inches(108))), 1e-9);
    HeadAssert.same(lancet, head("pointed", "concentric", Map.of("point", "lancet")), 1e-9);
    Length rise = Length.inches(36 * Math.sqrt(5));
    HeadAssert.same(lancet, head("pointed", "concentric", Map.of("rise", rise)), 1e-6);
    HeadLayout basket = head("three-centred", "concentric", Map.of("rise", Length.inches(24)));
    Length haunch = Length.mm(basket.curve().centres().get(0).trammel());
    Length crown = Length.mm(basket.curve().centres().get(2).trammel());
    HeadAssert.same(
        basket,
        head("three-centred", "concentric", Map.of("haunch-radius", haunch, "radius", crown)),
        1e-6);
    HeadAssert.same(
        basket,
        head(
            "three-centred",
            "concentric",
            Map.of("rise", Length.inches(24), "haunch-radius", haunch)),
        1e-6);
    HeadLayout stilted = head("semicircular", "level", Map.of("stilt", Length.inches(5)));
    HeadAssert.same(
        stilted, head("semicircular", "level", Map.of("rise", Length.inches(41))), 1e-9);
  }
}

package headcourse.layout.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.layout.HeadLayout;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.layout.Solution;
import headcourse.layout.shapes.Shapes;
import headcourse.testing.JobMaker;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Holds heads set from a pile around stones that are cut against what the job asks. */
final class FittedChecker {
  private FittedChecker() {}

  static FromStock choose(JobMaker m) {
    return PileChooser.setOut(m.make(), Shapes::named);
  }

  /** A stone as cut: as set out, and so many ticks wider. */
  static Fitted fitted(HeadLayout h, PlacedStone s, long ticks, Length tick) {
    String mark = h.opening().mark();
    return new Fitted(
        "fitted." + mark + "." + s.mark(),
        mark,
        s.mark(),
        s.bottom().plus(tick.times(ticks)),
        s.top().plus(tick.times(ticks)),
        null);
  }

  static void same(PlacedStone a, PlacedStone b, String at) {
    assertEquals(a.face(), b.face(), at);
    assertEquals(a.feet(), b.feet(), at);
    assertEquals(a.bottom(), b.bottom(), at);
    assertEquals(a.top(), b.top(), at);
    assertEquals(a.role(), b.role(), at);
  }

  static Map<String, FromStock.Taken> taken(FromStock chosen) {
    Map<String, FromStock.Taken> out = new HashMap<>();
    chosen.taken().forEach(t -> out.put(t.stone() + " " + t.copy(), t));
    return out;
  }

  static List<HeadLayout> heads(FromStock chosen) {
    List<HeadLayout> out = new ArrayList<>();
    for (Solution s : chosen.solutions()) {
      if (!(s instanceof Solution.Solved ok)) {
        return List.of();
      }
      out.add(ok.head());
    }
    return out;
  }

  /**
   * How far out on a side, by {@code D1-L}, stones are there; the key of a mark by {@code D1-K}.
   */
  private static Map<String, Integer> there(JobMaker m) {
    Map<String, Integer> out = new HashMap<>();
    for (Fitted f : m.fitted) {
      boolean key = f.stone().equals("K");
      String row = f.opening() + "-" + f.stone().charAt(0);
      out.merge(row, key ? 0 : Integer.parseInt(f.stone().substring(1)), Math::max);
    }
    return out;
  }

  /** Pieces are used once and hold their stones; stones not cut are as the job asks. */
  static void holds(JobMaker m, FromStock chosen, String at) {
    Job job = m.make();
    double tick = job.grid().tick().mm();
    Map<String, Integer> there = there(m);
    Map<String, Length> usable = new HashMap<>();
    for (Stock.Item i : job.stock().items()) {
      usable.put(i.mark() + "#1", i.length().minus(job.tools().saw().cleanCut().times(2)));
    }
    Set<String> used = new HashSet<>();
    chosen.taken().forEach(t -> assertTrue(used.add(t.piece()), at + " " + t));
    job.report().spoiled().forEach(p -> assertTrue(!used.contains(p), at + " " + p));
    Map<String, FromStock.Taken> taken = taken(chosen);
    for (HeadLayout h : heads(chosen)) {
      String mark = h.opening().mark() + "-";
      HeadSpec spec = h.opening().head();
      for (PlacedStone s : h.stones()) {
        String row = mark + s.mark().charAt(0);
        FromStock.Taken t = taken.get(mark + s.mark() + " 1");
        if (s.index() <= there.getOrDefault(row, s.role() == Role.KEY ? -1 : 0)) {
          continue;
        }
        if (s.role() != Role.KEY || t != null) {
          double extent = FanStockTest.extent(s);
          assertTrue(extent <= usable.get(t.piece()).mm() + 1e-6, at + " " + t);
          assertEquals(t.extent() * tick, extent + tick / 2, tick / 2 + 1e-5, at + " " + t);
        }
        if (s.role() != Role.KEY) {
          boolean top = "top".equals(spec.params().values().get("divide"));
          PlacedStone.Feet f = s.feet();
          Length w = top ? f.rightTop().minus(f.leftTop()) : f.rightSoffit().minus(f.leftSoffit());
          assertTrue(w.mm() >= spec.stones().min().mm() - tick, at + " " + s.mark() + " " + w);
          assertTrue(w.mm() <= spec.stones().max().mm() + tick, at + " " + s.mark() + " " + w);
        }
      }
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        assertTrue(h.bearing(side).onWall().compareTo(spec.bearing().min()) >= 0, at);
        assertTrue(h.bearing(side).onWall().compareTo(spec.bearing().max()) <= 0, at);
      }
      joints(job, h, there, at);
    }
  }

  /** Joints beyond what is cut clear the jambs and point at the striking point. */
  private static void joints(Job job, HeadLayout h, Map<String, Integer> there, String at) {
    HeadSpec spec = h.opening().head();
    for (JointLine j : h.joints()) {
      String row = h.opening().mark() + "-" + (j.side() == Side.LEFT ? "L" : "R");
      boolean key = there.containsKey(h.opening().mark() + "-K");
      if (j.index() <= there.getOrDefault(row, 0) && (key || j.index() > 0)) {
        continue;
      }
      boolean end = j.outer().isEmpty();
      double past = j.soffitMark().minus(h.jamb(j.side())).mm();
      double joint = job.setting().joint().mm();
      double clear = spec.clear().mm();
      assertTrue(
          end ? past >= -1e-6 : past + joint <= 1e-6 - clear || past >= clear - 1e-6,
          at + " " + past);
      if (h.curve() != null) {
        double slope = (j.head().x() - j.foot().x()) / (j.head().y() - j.foot().y());
        double lean = (j.foot().x() - slope * j.foot().y()) / h.curve().striking();
        double rise = spec.height().mm();
        assertEquals(lean * rise, slope * rise, job.grid().tick().mm() * 1.6, at);
      }
    }
  }
}

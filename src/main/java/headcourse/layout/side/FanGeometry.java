package headcourse.layout.side;

import java.util.ArrayList;
import java.util.List;

/**
 * Fanned stones: every joint points at the striking point.
 *
 * @param terms what the head keeps to
 * @param fan what the job says of the fan
 * @param camber rise of the soffit in the middle, mm
 */
public record FanGeometry(FlatTerms terms, Fan fan, double camber) implements FlatGeometry {
  @Override
  public List<SideCase> cases(FlatTerms.SideTerms side, double settled) {
    EndRange range = EndRange.of(terms, side);
    List<SideCase> cases = new ArrayList<>();
    if (!Double.isNaN(settled) || !fan.followsEnd()) {
      double striking = Double.isNaN(settled) ? fan.striking(terms, 0) : settled;
      FanLines lines = fan.lines(terms, striking);
      List<End> ends = ends(lines, side, range.first(), range.last());
      if (!ends.isEmpty()) {
        cases.add(new SideCase(lines, ends));
      }
      return cases;
    }
    for (long e = range.first(); e <= range.last(); e++) {
      FanLines lines = fan.lines(terms, fan.striking(terms, e));
      List<End> ends = ends(lines, side, e, e);
      if (!ends.isEmpty()) {
        cases.add(new SideCase(lines, ends));
      }
    }
    return cases;
  }

  private List<End> ends(FanLines lines, FlatTerms.SideTerms side, long first, long last) {
    SideCheck check = new SideCheck(terms, lines, true);
    List<End> ends = new ArrayList<>();
    if (!check.keyStands()) {
      return ends;
    }
    for (long e = first; e <= last; e++) {
      // A skewback may spring from the jamb itself; else the end keeps clear of it.
      boolean springs = terms.pastFar(e) >= 0 && terms.pastNear(e) < terms.tick();
      long top = FanLines.nearest(e * lines.growth());
      if ((springs || e >= check.after()) && terms.pastNear(top) <= side.wall()) {
        long foot = lines.onTop() ? top : e;
        ends.add(springs ? End.springing(terms, e, top, foot) : End.of(terms, side, e, top, foot));
      }
    }
    return ends;
  }

  @Override
  public FlatGeometry over(FlatTerms other) {
    return new FanGeometry(other, fan, camber);
  }

  @Override
  public boolean fanned() {
    return true;
  }

  /** Always: feet go to the nearest tick, so stones called even may differ by one. */
  @Override
  public boolean divides(Lines lines, End end, int count, long step) {
    return true;
  }

  @Override
  public long divided(Lines lines, End end, int count, long step, int index) {
    if (fan.byAngle() && step == 0) {
      return byAngle(lines, end, (double) index / count);
    }
    long run = end.foot() - lines.start();
    long twice = 2L * index * run + step * index * (count - index) * count;
    return lines.start() + Math.floorDiv(twice + count, 2L * count);
  }

  private long byAngle(Lines lines, End end, double part) {
    double depth = lines.striking() / terms.mm(1);
    double half = terms.joint() / 2.0;
    double from = Math.atan((lines.start() + half) / depth);
    double to = Math.atan((end.foot() + half) / depth);
    return FanLines.nearest(depth * Math.tan(from + part * (to - from)) - half);
  }
}

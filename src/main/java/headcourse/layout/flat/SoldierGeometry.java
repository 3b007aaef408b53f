package headcourse.layout.flat;

import headcourse.layout.side.End;
import headcourse.layout.side.EndRange;
import headcourse.layout.side.FlatGeometry;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.KeySize;
import headcourse.layout.side.Lines;
import headcourse.layout.side.SideCase;
import headcourse.layout.side.SideCheck;
import java.util.ArrayList;
import java.util.List;

/** Upright stones: plumb ends, widths on the soffit line, all of a side truly equal. */
record SoldierGeometry(FlatTerms terms, KeySize key, int ease) implements FlatGeometry {
  @Override
  public List<SideCase> cases(FlatTerms.SideTerms side, double striking) {
    SoldierLines lines = SoldierLines.of(key.soffit(), key.top(), terms.height(), ease);
    SideCheck check = new SideCheck(terms, lines, false);
    List<End> ends = new ArrayList<>();
    EndRange range = EndRange.of(terms, side);
    for (long e = Math.max(range.first(), check.after()); e <= range.last(); e++) {
      ends.add(End.of(terms, side, e, e, e));
    }
    return check.keyStands() ? List.of(new SideCase(lines, ends)) : List.of();
  }

  @Override
  public FlatGeometry over(FlatTerms other) {
    return new SoldierGeometry(other, key, ease);
  }

  @Override
  public boolean fanned() {
    return false;
  }

  @Override
  public double camber() {
    return 0;
  }

  @Override
  public boolean divides(Lines lines, End end, int count, long step) {
    return twiceFirst(lines, end, count, step) % (2L * count) == 0;
  }

  @Override
  public long divided(Lines lines, End end, int count, long step, int index) {
    long first = twiceFirst(lines, end, count, step) / (2L * count);
    return lines.start() + index * (first + terms.joint()) - step * index * (index - 1) / 2;
  }

  /** The first stone's width, times twice their number. */
  private long twiceFirst(Lines lines, End end, int count, long step) {
    long widths = end.foot() - lines.start() - count * terms.joint();
    return 2 * widths + step * count * (count - 1);
  }
}

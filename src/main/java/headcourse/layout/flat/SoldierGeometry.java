package headcourse.layout.flat;

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
      ends.add(new End(e, e, e, terms.past(e)));
    }
    return check.keyStands() ? List.of(new SideCase(lines, ends)) : List.of();
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
  public long[] divided(Lines lines, End end, int count, long step) {
    long widths = end.foot() - lines.start() - count * terms.joint();
    long first = widths + step * count * (count - 1) / 2;
    if (first % count != 0) {
      return null;
    }
    long[] feet = new long[count - 1];
    long at = lines.start();
    for (int i = 1; i < count; i++) {
      at += first / count - (i - 1) * step + terms.joint();
      feet[i - 1] = at;
    }
    return feet;
  }
}

package headcourse.stock;

import headcourse.stock.pile.Pile;
import headcourse.stock.pile.PileSide;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A side beside any of several keys: it allows what it allows beside one of them. Feet are counted
 * as beside the narrowest key, so no choice for one of the keys costs less than the best for this.
 */
final class AnyKeySide implements PileSide {
  private final List<PileSide> sides;
  private final long start;
  private final long firstEnd;
  private final long[] off;
  private final byte[][] stands;

  AnyKeySide(List<PileSide> sides) {
    this.sides = List.copyOf(sides);
    this.start = sides.stream().mapToLong(PileSide::start).min().orElseThrow();
    this.firstEnd = sides.stream().mapToLong(s -> s.firstEnd() - moved(s)).min().orElseThrow();
    long last = sides.stream().mapToLong(s -> s.lastEnd() - moved(s)).max().orElseThrow();
    this.off = new long[(int) Math.max(0, last - firstEnd + 1)];
    Arrays.fill(off, -1);
    for (PileSide s : sides) {
      for (long e = s.firstEnd(); e <= s.lastEnd(); e++) {
        int i = (int) (e - moved(s) - firstEnd);
        long one = s.bearingOff(e);
        off[i] = off[i] < 0 || one >= 0 && one < off[i] ? one : off[i];
      }
    }
    int rules = sides.stream().mapToInt(PileSide::regularFrom).max().orElseThrow();
    this.stands = new byte[rules + 1][(int) Math.max(0, last - start + 1)];
  }

  /** How much farther out a foot is beside one of the keys. */
  private long moved(PileSide s) {
    return s.start() - start;
  }

  @Override
  public long start() {
    return start;
  }

  @Override
  public long joint() {
    return sides.get(0).joint();
  }

  @Override
  public long firstEnd() {
    return firstEnd;
  }

  @Override
  public long lastEnd() {
    return firstEnd + off.length - 1;
  }

  @Override
  public long bearingOff(long foot) {
    return foot < firstEnd || foot > lastEnd() ? -1 : off[(int) (foot - firstEnd)];
  }

  @Override
  public boolean jointStands(int index, long foot) {
    int i = Math.min(index, stands.length - 1);
    int at = (int) (foot - start);
    if (at < 0 || at >= stands[i].length) {
      return sides.stream().anyMatch(s -> s.jointStands(i, foot + moved(s)));
    }
    if (stands[i][at] == 0) {
      boolean any = sides.stream().anyMatch(s -> s.jointStands(i, foot + moved(s)));
      stands[i][at] = (byte) (any ? 1 : -1);
    }
    return stands[i][at] > 0;
  }

  @Override
  public boolean stoneFits(int index, long inner, long outer) {
    return sides.stream().anyMatch(s -> s.stoneFits(index, inner + moved(s), outer + moved(s)));
  }

  @Override
  public boolean endFits(int index, long inner, long end) {
    return bearingOff(end) >= 0
        && sides.stream().anyMatch(s -> s.endFits(index, inner + moved(s), end + moved(s)));
  }

  @Override
  public long extra(int index) {
    return sides.stream().mapToLong(s -> s.extra(index)).min().orElseThrow();
  }

  @Override
  public int regularFrom() {
    return stands.length - 1;
  }

  /** Both sides of a head, one and the same where they are alike. */
  static List<AnyKeySide> both(List<UprightKey> keys) {
    AnyKeySide left = new AnyKeySide(keys.stream().map(k -> (PileSide) k.left()).toList());
    AnyKeySide right = new AnyKeySide(keys.stream().map(k -> (PileSide) k.right()).toList());
    return List.of(left, left.equals(right) ? left : right);
  }

  /** The members beside which a row with such joints may stand, narrowest key first. */
  List<PileSide> holding(List<Pile.Picked> row) {
    return sides.stream()
        .filter(s -> holds(s, row))
        .sorted(Comparator.comparingLong(PileSide::start))
        .toList();
  }

  private static boolean holds(PileSide s, List<Pile.Picked> row) {
    long foot = s.start();
    for (int i = 1; i < row.size(); i++) {
      long outer = foot + s.joint() + row.get(i - 1).width();
      if (!s.jointStands(i, outer) || !s.stoneFits(i, foot, outer)) {
        return false;
      }
      foot = outer;
    }
    long end = foot + s.joint() + row.get(row.size() - 1).width();
    return s.bearingOff(end) >= 0 && s.endFits(row.size(), foot, end);
  }

  @Override
  public boolean equals(Object o) {
    return this == o || o instanceof AnyKeySide a && a.sides.equals(sides);
  }

  @Override
  public int hashCode() {
    return sides.size() * 31 + Long.hashCode(firstEnd);
  }
}

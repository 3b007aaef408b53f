package headcourse.stock;

import headcourse.job.Fitted;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Side;
import headcourse.layout.flat.FittedHead;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatReading;
import headcourse.stock.ChangeModel.Site;
import headcourse.stock.FanKeys.Stand;
import headcourse.stock.PileReader.Lying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/** The ways in which the heads of a pile may go on: by the widths of keys that are left open. */
final class ChangeSites {
  private static final int WAYS = 1000;

  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;
  private final List<Fitted> fitted;

  /**
   * @param openings as the job has them
   * @param fitted the stones that count as cut
   */
  ChangeSites(
      Job job,
      List<Opening> openings,
      Function<Opening, FlatReading> read,
      PileReader yard,
      List<Fitted> fitted) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.yard = yard;
    this.fitted = fitted;
  }

  private boolean keyCut(Opening o) {
    return fitted.stream().anyMatch(f -> f.opening().equals(o.mark()) && f.stone().equals("K"));
  }

  /**
   * All ways, as planned first, then those with one other key, and so on; none where stones that
   * are there can't stand beside each other.
   *
   * @param plan what was planned
   * @param gone pieces that are not there any more
   */
  ChangeWays of(PilePlan plan, Set<String> gone) {
    ChangeWays ways = ways(plan, gone, false);
    // Struck from elsewhere at least one stone of a fan would lean otherwise; not tried here.
    return struckFromEnd(plan) ? new ChangeWays(ways.ways(), Math.min(1, ways.beyond())) : ways;
  }

  /** Whether some head may be struck from elsewhere than was planned. */
  static boolean struckFromEnd(PilePlan plan) {
    return plan.heads().stream().anyMatch(h -> h.made().head().struckFromEnd());
  }

  /** The same wherever the joints of fans are struck from. */
  ChangeWays struck(PilePlan plan, Set<String> gone) {
    return ways(plan, gone, true);
  }

  private ChangeWays ways(PilePlan plan, Set<String> gone, boolean struck) {
    List<List<Site>> choices = new ArrayList<>();
    for (int k = 0; k < openings.size(); k++) {
      PilePlan.Head h = plan.heads().get(k);
      Opening o = openings.get(k);
      long key = keyWidth(plan, k, gone);
      List<Site> own = new ArrayList<>();
      own.add(site(h.made().head(), h, key, false));
      boolean open = KeySearch.open(o) && !keyCut(o);
      if (struck && h.made().head().struckFromEnd()) {
        for (Stand s : keyCut(o) ? cutKey(o) : stands(o, gone)) {
          own.add(struck(s, h));
        }
      } else if (open && h.made().head().fanned()) {
        double striking = h.left().lines().striking();
        for (Stand s : stands(o, gone)) {
          if (s.left().lines().striking() == striking && s.key() != key) {
            own.add(site(s.head(), h, s.key(), true));
          }
        }
      } else if (open) {
        for (long w : widths(o, gone)) {
          FlatReading reading = read.apply(KeySearch.keyed(o, job.grid().ticks(w)));
          if (w != key && reading.head() != null) {
            own.add(site(reading.head(), h, w, true));
          }
        }
      }
      if (own.get(0) == null && !struck) {
        return ChangeWays.NONE;
      }
      own.removeIf(Objects::isNull);
      choices.add(own);
    }
    return ChangeWays.product(choices, WAYS);
  }

  private Site struck(Stand s, PilePlan.Head before) {
    FittedHead made =
        FittedHead.of(s.head(), fitted, before.layout(), before.left(), before.right());
    return site(made, s.left().lines().striking(), s.key(), true);
  }

  /** Keys and striking points of a fan, each once; those that bear as asked first. */
  private List<Stand> stands(Opening o, Set<String> gone) {
    Map<List<Object>, Stand> all = new LinkedHashMap<>();
    for (FanKeys.Keyed k : new FanKeys(job, o, openings, read).of(yard.pieces(gone))) {
      for (Stand s : k.stands()) {
        long key = k.pieces().isEmpty() ? -1 : s.key();
        Stand stand = new Stand(s.head(), s.left(), s.right(), key);
        all.putIfAbsent(List.of(s.left().lines().striking(), key), stand);
      }
    }
    return all.values().stream()
        .sorted(Comparator.comparingLong(s -> s.left().bearingOff(s.left().firstEnd())))
        .toList();
  }

  /** All ways where nothing was planned. */
  ChangeWays fresh(Set<String> gone) {
    return ChangeWays.product(openings.stream().map(o -> fresh(o, gone)).toList(), WAYS);
  }

  private List<Site> fresh(Opening o, Set<String> gone) {
    List<Site> own = new ArrayList<>();
    FlatReading reading = read.apply(o);
    if (reading.head() != null && reading.head().fanned()) {
      for (Stand s : keyCut(o) ? cutKey(o) : stands(o, gone)) {
        FittedHead made = FittedHead.of(s.head(), fitted, null, null, null);
        own.add(site(made, s.left().lines().striking(), s.key(), false));
      }
      own.removeIf(Objects::isNull);
    } else if (!KeySearch.open(o)) {
      add(own, o, keyCut(o) ? -1 : bought(o, gone) ? -1 : given(o));
    } else if (keyCut(o)) {
      long half = job.grid().nearest(cutKeyOf(o).bottom().half());
      add(own, KeySearch.keyed(o, job.grid().ticks(2 * half)), -1);
    } else {
      for (long w : widths(o, gone)) {
        add(own, KeySearch.keyed(o, job.grid().ticks(w)), w);
      }
    }
    return own;
  }

  private Fitted cutKeyOf(Opening o) {
    return fitted.stream()
        .filter(x -> x.opening().equals(o.mark()) && x.stone().equals("K"))
        .findFirst()
        .orElseThrow();
  }

  /** Striking points beside a key that is cut, which is no matter of the pile any more. */
  private List<Stand> cutKey(Opening o) {
    Opening keyed = KeySearch.open(o) ? KeyWidths.of(o, cutKeyOf(o).bottom(), null) : o;
    return FanKeys.stands(read.apply(keyed).head()).stream()
        .map(s -> new Stand(s.head(), s.left(), s.right(), -1))
        .sorted(Comparator.comparingLong(s -> s.left().bearingOff(s.left().firstEnd())))
        .toList();
  }

  private void add(List<Site> own, Opening o, long key) {
    FlatReading reading = read.apply(o);
    Site site = reading.head() == null ? null : site(reading.head(), null, key, false);
    if (site != null) {
      own.add(site);
    }
  }

  private Site site(FlatHead head, PilePlan.Head before, long key, boolean other) {
    FittedHead made =
        before == null
            ? FittedHead.of(head, fitted, null, null, null)
            : FittedHead.of(head, fitted, before.layout(), before.left(), before.right());
    double striking = before != null ? before.left().lines().striking() : Double.NaN;
    return site(made, head.fanned() ? striking : Double.NaN, key, other);
  }

  private static Site site(FittedHead made, double striking, long key, boolean other) {
    FittedHead.Left l = made.left(Side.LEFT, striking);
    FittedHead.Left r = made.left(Side.RIGHT, striking);
    return l == null || r == null ? null : new Site(made, l, r, key, other);
  }

  /** Width of a key that comes from the pile, or −1. */
  private long keyWidth(PilePlan plan, int k, Set<String> gone) {
    Opening o = openings.get(k);
    List<FromStock.Taken> of = plan.of(o.mark() + "-K");
    if (keyCut(o) || of.isEmpty()) {
      return -1;
    }
    boolean lost = of.stream().anyMatch(t -> gone.contains(t.piece()));
    long width = of.get(0).extent();
    // A key of a given width that the yard has not got any more is ordered.
    boolean spare =
        yard.pieces(gone).stream()
            .anyMatch(
                p -> p.usable() >= width && !plan.takes(p.id()) && yard.fits(p.item(), o, true));
    return lost && !spare && !KeySearch.open(o) ? -1 : width;
  }

  private static long ticks(Job job, Opening o) {
    return job.grid().ceil(o.head().key().bottom().max(o.head().key().top()));
  }

  private long given(Opening o) {
    return o.head().key() == null ? -1 : ticks(job, o);
  }

  private boolean bought(Opening o, Set<String> gone) {
    return o.head().key() == null
        || yard.pieces(gone).stream()
                .filter(p -> yard.fits(p.item(), o, true) && p.usable() >= ticks(job, o))
                .count()
            < o.count();
  }

  private List<Long> widths(Opening o, Set<String> gone) {
    long target = job.grid().nearest(o.head().stones().target());
    long min = job.grid().ceil(o.head().stones().min());
    return yard.pieces(gone).stream()
        .filter(p -> yard.fits(p.item(), o, true))
        .map((Lying p) -> p.usable() / 2 * 2)
        .filter(w -> w >= min)
        .distinct()
        .sorted(Comparator.comparingLong((Long w) -> Math.abs(w - target)).thenComparing(w -> w))
        .toList();
  }
}

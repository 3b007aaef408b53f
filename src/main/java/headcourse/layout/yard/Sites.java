package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Side;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.SideCase;
import headcourse.layout.yard.YardPieces.Lying;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The keys and striking points that the heads may have. A key whose width is left open is as wide
 * as one of the pieces gives; one whose width is given takes a piece that holds it, or is ordered
 * where the yard has none.
 *
 * @param job the job
 * @param openings those that are set from the pile
 * @param read a flat head before its stones are chosen
 * @param fitted the stones that count as cut
 */
record Sites(
    Job job, List<Opening> openings, Function<Opening, FlatReading> read, List<Fitted> fitted) {
  /** How many ticks the key's upper end may be asked for beside a piece's length. */
  private static final int ABOUT = 2;

  private static boolean widthOpen(Opening o) {
    HeadSpec.Key key = o.head().key();
    return key != null && key.bottom() == null && key.top() == null;
  }

  private Fitted cutKey(Opening o) {
    return fitted.stream().filter(f -> f.mark().equals(o.mark() + "-K")).findFirst().orElse(null);
  }

  /** Whether the key is as wide as a piece gives. */
  private boolean open(Opening o) {
    return widthOpen(o) && cutKey(o) == null;
  }

  private FlatHead keyed(Opening o, Length bottom, Length top) {
    return read.apply(o.with(o.head().with(o.head().key().with(bottom, top)))).head();
  }

  private boolean fanned(Opening o) {
    return read.apply(o).head().fanned();
  }

  /**
   * By head: all sites there are.
   *
   * @param plan what was planned, or null
   * @param gone pieces that are not there any more
   */
  List<List<Site>> anew(PilePlan plan, Set<String> gone) {
    List<List<Site>> all = new ArrayList<>(Collections.nCopies(openings.size(), null));
    Set<String> busy = new LinkedHashSet<>(gone);
    // Keys whose widths are given come first, so that none is ordered for the sake of an open one.
    for (boolean open : List.of(false, true)) {
      for (int k = 0; k < openings.size(); k++) {
        Opening o = openings.get(k);
        PilePlan.Head before = plan == null ? null : plan.heads().get(k);
        if (open(o) == open) {
          all.set(k, open ? open(o, busy, before) : given(o, busy, before));
        }
      }
    }
    return all;
  }

  private List<Site> given(Opening o, Set<String> busy, PilePlan.Head before) {
    Fitted cut = cutKey(o);
    FlatHead head;
    if (!widthOpen(o)) {
      head = read.apply(o).head();
    } else if (fanned(o)) {
      head = keyed(o, cut.bottom(), null);
    } else {
      Length bottom = job.grid().ticks(2 * job.grid().nearest(cut.bottom().half()));
      head = keyed(o, bottom, bottom);
    }
    List<Site> out =
        stands(head, before, before != null).stream()
            .map(s -> cut == null && held(o, busy, s.key()) ? s : s.ordered())
            .toList();
    long longest = out.stream().mapToLong(Site::key).max().orElse(-1);
    if (longest >= 0) {
      // Its pieces are not counted for the key of another head as well.
      holding(o, busy, longest).stream().limit(o.count()).forEach(p -> busy.add(p.id()));
    }
    return out;
  }

  private List<Lying> holding(Opening o, Set<String> gone, long extent) {
    return new YardPieces(job).holding(o, true, extent, gone);
  }

  private boolean held(Opening o, Set<String> gone, long extent) {
    return holding(o, gone, extent).size() >= o.count();
  }

  /**
   * Keys as wide as the pieces give.
   *
   * @param before the head as planned, or null
   */
  private List<Site> open(Opening o, Set<String> gone, PilePlan.Head before) {
    Map<List<Object>, Site> out = new LinkedHashMap<>();
    boolean fan = fanned(o);
    long least = job.grid().ceil(o.head().stones().min());
    // Both halves of an upright key are whole ticks.
    least += fan ? 0 : least % 2;
    long target = job.grid().nearest(o.head().stones().target());
    List<Long> lengths =
        holding(o, gone, least).stream()
            .map(Lying::usable)
            .distinct()
            .filter(u -> held(o, gone, u))
            .sorted(Comparator.comparingLong(u -> Math.abs(u - target)))
            .toList();
    for (long u : lengths) {
      Length even = job.grid().ticks(u / 2 * 2);
      for (Site s : fan ? fans(o, u, before) : stands(keyed(o, even, even), before, false)) {
        out.putIfAbsent(List.of(s.key(), ends(s)), s);
      }
    }
    return List.copyOf(out.values());
  }

  /** For each striking point the widest key that a piece gives. */
  private List<Site> fans(Opening o, long usable, PilePlan.Head before) {
    Map<List<Object>, Site> widest = new LinkedHashMap<>();
    for (long w = usable + ABOUT; w >= usable - ABOUT; w--) {
      Length top = job.grid().ticks(w);
      for (Site s : stands(keyed(o, null, top), before, false)) {
        Site known = widest.get(ends(s));
        boolean asked = s.made().head().key(s.left().all()).top().equals(top);
        if (s.key() <= usable
            && (known == null || s.key() > known.key() || s.key() == known.key() && asked)) {
          widest.put(ends(s), s);
        }
      }
    }
    return List.copyOf(widest.values());
  }

  private static List<Object> ends(Site s) {
    List<Object> out = new ArrayList<>(List.of(s.striking()));
    for (int side = 0; side < 2; side++) {
      SideCase rest = s.on(side).rest();
      out.add(rest == null ? List.of() : rest.ends());
    }
    return out;
  }

  /**
   * The striking points of a head: in a fan that follows its end, one for each end on each side.
   *
   * @param before the head as planned, or null
   * @param wide whether the end that a fan follows may move once it is struck
   */
  private List<Site> stands(FlatHead head, PilePlan.Head before, boolean wide) {
    Map<List<Object>, Site> out = new LinkedHashMap<>();
    if (head == null) {
      return List.of();
    }
    FlatTerms terms = head.terms();
    for (int n = 0; n < (head.struckFromEnd() ? 2 : 1); n++) {
      int s = swapped(terms) ? 1 - n : n;
      for (SideCase c : head.cases(s == 0 ? terms.left() : terms.right(), Double.NaN)) {
        double striking = head.fanned() ? c.lines().striking() : Double.NaN;
        Site site = site(head, before, striking, head.keyExtent(c.lines()));
        if (site != null && head.struckFromEnd() && !wide) {
          site = site.ending(s, c.ends());
        }
        if (site != null) {
          out.putIfAbsent(ends(site), site);
        }
      }
    }
    return List.copyOf(out.values());
  }

  /**
   * Sides change places where the wall or the jamb on the right is the nearer, so that a mirrored
   * job is set out mirrored.
   */
  static boolean swapped(FlatTerms terms) {
    int wall = Long.compare(terms.right().wall(), terms.left().wall());
    return wall < 0 || wall == 0 && terms.right().jamb() < terms.left().jamb();
  }

  /** The head with the stones that are cut, or null where these can't stand beside each other. */
  private Site site(FlatHead head, PilePlan.Head before, double striking, long key) {
    FittedHead made = PilePlan.Head.around(head, fitted, before);
    FittedHead.Left l = made.left(Side.LEFT, striking);
    FittedHead.Left r = made.left(Side.RIGHT, striking);
    return l == null || r == null ? null : new Site(made, l, r, key);
  }

  /**
   * By head: the site as planned first, then those with other keys; null where stones that are
   * there can't stand beside each other.
   *
   * @param plan what was planned
   * @param gone pieces that are not there any more
   */
  List<List<Site>> after(PilePlan plan, Set<String> gone) {
    List<List<Site>> all = new ArrayList<>();
    for (int k = 0; k < openings.size(); k++) {
      Opening o = openings.get(k);
      PilePlan.Head h = plan.heads().get(k);
      FlatHead head = h.made().head();
      double striking = head.fanned() ? h.left().lines().striking() : Double.NaN;
      Site same = site(head, h, striking, keyWidth(plan, o, gone));
      if (same == null) {
        return null;
      }
      List<Site> own = new ArrayList<>(List.of(same));
      for (Site s : open(o) ? open(o, gone, h) : List.<Site>of()) {
        boolean here = !head.fanned() || s.striking() == striking;
        Site wide = site(s.made().head(), h, striking, s.key());
        if (here && s.key() != same.key() && wide != null) {
          own.add(wide);
        }
      }
      all.add(own);
    }
    return all;
  }

  /** Length of a planned key that comes from the pile, or −1. */
  private long keyWidth(PilePlan plan, Opening o, Set<String> gone) {
    List<FromStock.Taken> of = plan.of(o.mark() + "-K");
    if (cutKey(o) != null || of.isEmpty()) {
      return -1;
    }
    long width = of.get(0).extent();
    boolean lost = of.stream().anyMatch(t -> gone.contains(t.piece()));
    // A key of a given width that the yard has not got any more is ordered.
    boolean spare = holding(o, gone, width).stream().anyMatch(p -> !plan.takes(p.id()));
    return lost && !spare && !widthOpen(o) ? -1 : width;
  }
}

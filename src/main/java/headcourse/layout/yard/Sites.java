package headcourse.layout.yard;

import headcourse.job.Fitted;
import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Side;
import headcourse.layout.fitted.FittedHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.side.End;
import headcourse.layout.side.FlatHead;
import headcourse.layout.side.FlatTerms;
import headcourse.layout.side.SideCase;
import headcourse.layout.yard.YardPieces.Lying;
import headcourse.units.Length;
import java.util.ArrayList;
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
 */
final class Sites {
  /** How many ticks the key's upper end may be asked for beside a piece's length. */
  private static final int ABOUT = 2;

  private final Job job;
  private final List<Opening> openings;
  private final Function<Opening, FlatReading> read;
  private final YardPieces yard;
  private final List<Fitted> fitted;

  /**
   * @param openings those that are set from the pile
   * @param fitted the stones that count as cut
   */
  Sites(Job job, List<Opening> openings, Function<Opening, FlatReading> read, List<Fitted> fitted) {
    this.job = job;
    this.openings = openings;
    this.read = read;
    this.yard = new YardPieces(job);
    this.fitted = fitted;
  }

  static boolean open(Opening o) {
    HeadSpec.Key key = o.head().key();
    return key != null && key.bottom() == null && key.top() == null;
  }

  private Fitted cutKey(Opening o) {
    return fitted.stream()
        .filter(f -> f.opening().equals(o.mark()) && f.stone().equals("K"))
        .findFirst()
        .orElse(null);
  }

  /** By head: all sites where nothing was planned. */
  List<List<Site>> fresh(Set<String> gone) {
    List<List<Site>> all = new ArrayList<>(java.util.Collections.nCopies(openings.size(), null));
    Set<String> busy = new LinkedHashSet<>(gone);
    // Keys whose widths are given come first, so that none is ordered for the sake of an open one.
    for (int pass = 0; pass < 2; pass++) {
      for (int k = 0; k < openings.size(); k++) {
        Opening o = openings.get(k);
        if (open(o) && cutKey(o) == null ? pass == 1 : pass == 0) {
          all.set(k, fresh(o, busy));
        }
      }
    }
    return all;
  }

  private List<Site> fresh(Opening o, Set<String> busy) {
    Fitted cut = cutKey(o);
    if (open(o) && cut == null) {
      return open(o, busy, Double.NaN, null);
    }
    Opening keyed = o;
    if (open(o)) {
      Length bottom = job.grid().ticks(2 * job.grid().nearest(cut.bottom().half()));
      keyed = fanned(o) ? KeyWidths.of(o, cut.bottom(), null) : KeyWidths.of(o, bottom, bottom);
    }
    List<Site> out = new ArrayList<>();
    long longest = -1;
    for (Site s : stands(read.apply(keyed).head(), null, false)) {
      boolean pile = o.head().key() != null && cut == null && held(o, busy, s.key());
      out.add(pile ? s : s.ordered());
      longest = pile ? Math.max(longest, s.key()) : longest;
    }
    reserve(o, busy, longest);
    return out;
  }

  private boolean fanned(Opening o) {
    FlatHead head = read.apply(o).head();
    return head != null && head.fanned();
  }

  private boolean held(Opening o, Set<String> busy, long extent) {
    long n = yard.forKey(o, busy).stream().filter(p -> p.usable() >= extent).count();
    return n >= o.count();
  }

  /** Keeps a key's pieces from being counted for the key of another head as well. */
  private void reserve(Opening o, Set<String> busy, long extent) {
    if (extent >= 0) {
      yard.forKey(o, busy).stream()
          .filter(p -> p.usable() >= extent)
          .limit(o.count())
          .forEach(p -> busy.add(p.id()));
    }
  }

  /**
   * Keys as wide as the pieces give.
   *
   * @param striking where the joints are struck from, or NaN for anywhere
   * @param before the head as planned, or null
   */
  private List<Site> open(Opening o, Set<String> gone, double striking, PilePlan.Head before) {
    Map<List<Object>, Site> out = new LinkedHashMap<>();
    long least = job.grid().ceil(o.head().stones().min());
    Set<Long> lengths = new LinkedHashSet<>();
    long target = job.grid().nearest(o.head().stones().target());
    yard.forKey(o, gone).stream()
        .map(Lying::usable)
        .filter(u -> u >= least)
        .sorted(Comparator.comparingLong((Long u) -> Math.abs(u - target)))
        .forEach(lengths::add);
    boolean fan = fanned(o);
    for (long u : lengths) {
      if (!held(o, gone, u)) {
        continue;
      }
      for (Site s : fan ? fans(o, u, before, striking) : upright(o, u / 2 * 2, least, before)) {
        out.putIfAbsent(List.of(s.striking(), s.key(), ends(s)), s);
      }
    }
    return List.copyOf(out.values());
  }

  /** Both halves of an upright key are whole ticks. */
  private List<Site> upright(Opening o, long width, long least, PilePlan.Head before) {
    Length w = job.grid().ticks(width);
    return width < least
        ? List.of()
        : stands(read.apply(KeyWidths.of(o, w, w)).head(), before, false);
  }

  /** For each striking point the widest key that a piece gives. */
  private List<Site> fans(Opening o, long usable, PilePlan.Head before, double striking) {
    Map<List<Object>, Site> widest = new LinkedHashMap<>();
    for (long w = usable + ABOUT; w >= usable - ABOUT; w--) {
      Length top = job.grid().ticks(w);
      for (Site s : stands(read.apply(KeyWidths.of(o, null, top)).head(), before, false)) {
        Site known = widest.get(ends(s));
        boolean here = Double.isNaN(striking) || s.striking() == striking;
        boolean asked = here && s.made().head().key(s.left().all()).top().equals(top);
        if (here
            && s.key() <= usable
            && (known == null || s.key() > known.key() || s.key() == known.key() && asked)) {
          widest.put(ends(s), s);
        }
      }
    }
    return List.copyOf(widest.values());
  }

  private static List<Object> ends(Site s) {
    List<Object> out = new ArrayList<>();
    out.add(s.striking());
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
    FlatTerms.SideTerms[] sides = {head.terms().left(), head.terms().right()};
    int first = swapped(head.terms()) ? 1 : 0;
    for (int n = 0; n < (head.struckFromEnd() ? 2 : 1); n++) {
      int s = n == 0 ? first : 1 - first;
      for (SideCase c : head.cases(sides[s], Double.NaN)) {
        double striking = head.fanned() ? c.lines().striking() : Double.NaN;
        Site site = site(head, before, striking, head.keyExtent(c.lines()));
        if (site != null && head.struckFromEnd() && !wide) {
          site = only(site, s, c);
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

  /** The site with one side ending where its joints are struck for. */
  private static Site only(Site s, int side, SideCase c) {
    FittedHead.Left l = s.on(side);
    if (l.rest() == null) {
      return s;
    }
    long start = l.rest().lines().start();
    List<End> ends = c.ends().stream().filter(e -> e.foot() > start).toList();
    if (ends.isEmpty() && !l.whole()) {
      return null;
    }
    SideCase rest = ends.isEmpty() ? null : new SideCase(l.rest().lines(), ends);
    FittedHead.Left one =
        new FittedHead.Left(
            l.terms(),
            rest,
            l.check(),
            l.whole(),
            l.there(),
            l.asDrawn(),
            l.cut(),
            l.ended(),
            l.all(),
            l.flush(),
            l.lengths());
    return side == 0
        ? new Site(s.made(), one, s.right(), s.key(), s.other())
        : new Site(s.made(), s.left(), one, s.key(), s.other());
  }

  /** The head with the stones that are cut, or null where these can't stand beside each other. */
  private Site site(FlatHead head, PilePlan.Head before, double striking, long key) {
    FittedHead made =
        before == null
            ? FittedHead.of(head, fitted, null, null, null)
            : FittedHead.of(head, fitted, before.layout(), before.left(), before.right());
    FittedHead.Left l = made.left(Side.LEFT, striking);
    FittedHead.Left r = made.left(Side.RIGHT, striking);
    return l == null || r == null ? null : new Site(made, l, r, key, false);
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
      Site same = site(head, h, striking, keyWidth(plan, k, gone));
      if (same == null) {
        return null;
      }
      List<Site> own = new ArrayList<>(List.of(same));
      if (open(o) && cutKey(o) == null) {
        open(o, gone, striking, h).stream()
            .filter(s -> s.key() != same.key())
            .map(s -> wide(s, h, striking))
            .filter(java.util.Objects::nonNull)
            .forEach(own::add);
      }
      all.add(own);
    }
    return all;
  }

  private Site wide(Site s, PilePlan.Head before, double striking) {
    Site site = site(s.made().head(), before, striking, s.key());
    return site == null ? null : new Site(site.made(), site.left(), site.right(), s.key(), true);
  }

  /** By head: the same wherever the joints of fans are struck from. */
  List<List<Site>> struck(PilePlan plan, Set<String> gone) {
    List<List<Site>> all = new ArrayList<>();
    for (int k = 0; k < openings.size(); k++) {
      Opening o = openings.get(k);
      PilePlan.Head h = plan.heads().get(k);
      Fitted cut = cutKey(o);
      List<Site> own = new ArrayList<>();
      if (open(o) && cut == null) {
        own.addAll(open(o, gone, Double.NaN, h));
      } else {
        Opening keyed = open(o) ? KeyWidths.of(o, cut.bottom(), null) : o;
        for (Site s : stands(read.apply(keyed).head(), h, true)) {
          own.add(cut == null && held(o, gone, s.key()) ? s : s.ordered());
        }
      }
      all.add(own);
    }
    return all;
  }

  /** Length of a planned key that comes from the pile, or −1. */
  private long keyWidth(PilePlan plan, int k, Set<String> gone) {
    Opening o = openings.get(k);
    List<FromStock.Taken> of = plan.of(o.mark() + "-K");
    if (cutKey(o) != null || of.isEmpty()) {
      return -1;
    }
    boolean lost = of.stream().anyMatch(t -> gone.contains(t.piece()));
    long width = of.get(0).extent();
    // A key of a given width that the yard has not got any more is ordered.
    boolean spare =
        yard.forKey(o, gone).stream().anyMatch(p -> p.usable() >= width && !plan.takes(p.id()));
    return lost && !spare && !open(o) ? -1 : width;
  }
}

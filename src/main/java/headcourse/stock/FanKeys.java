package headcourse.stock;

import headcourse.job.HeadSpec;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.Side;
import headcourse.layout.flat.FlatHead;
import headcourse.layout.flat.FlatReading;
import headcourse.layout.flat.FlatTerms;
import headcourse.layout.flat.SideCase;
import headcourse.layout.flat.StoneExtents;
import headcourse.stock.PileReader.Lying;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The keys that one head may have, each with the striking points that go with it. In a fan the
 * key's sides are joints, so how long it is along its blank depends on where they all meet.
 */
final class FanKeys {
  /** How many ticks the key's upper end may be asked for beside a piece's length. */
  private static final int ABOUT = 2;

  private final Job job;
  private final Opening opening;
  private final Function<Opening, FlatReading> read;
  private final PileReader yard;
  private final List<Opening> openings;
  private final Map<Long, List<Stand>> open = new HashMap<>();
  private List<Stand> given;
  private boolean complete = true;

  /**
   * @param openings all that are set from the pile
   */
  FanKeys(Job job, Opening opening, List<Opening> openings, Function<Opening, FlatReading> read) {
    this.job = job;
    this.opening = opening;
    this.openings = List.copyOf(openings);
    this.read = read;
    this.yard = new PileReader(job);
  }

  /** Whether one of the keys given so far is best in any case. */
  boolean complete() {
    return complete;
  }

  /**
   * A striking point.
   *
   * @param head the head as read for it
   * @param left its left side
   * @param right its right side
   * @param key how long the key is along its blank, ticks
   */
  record Stand(FlatHead head, FlatSide left, FlatSide right, long key) {
    Stand mirrored() {
      return new Stand(head, right, left, key);
    }
  }

  /**
   * A key.
   *
   * @param name what it is called among those of its head
   * @param pieces the pieces it is cut from, one for each copy; none where there is no key or it
   *     must be ordered
   * @param stands the striking points
   */
  record Keyed(String name, List<Lying> pieces, List<Stand> stands) {
    long sawn(Stand s) {
      return pieces.stream().mapToLong(p -> p.usable() - s.key).sum();
    }

    /** The least that is sawn off. */
    long leastSawn() {
      return stands.stream().mapToLong(this::sawn).min().orElse(0);
    }
  }

  /** The keys, from the pieces that lie there; those nearest the target first. */
  List<Keyed> of(List<Lying> lying) {
    HeadSpec.Key key = opening.head().key();
    if (key == null) {
      List<Stand> stands = given();
      return stands.isEmpty() ? List.of() : List.of(new Keyed("none", List.of(), stands));
    }
    List<Lying> fit = fit(lying);
    return key.bottom() == null && key.top() == null ? open(fit) : given(fit);
  }

  private List<Stand> given() {
    given = given == null ? stands(read.apply(opening).head()) : given;
    return given;
  }

  /** A key whose width is given takes the shortest pieces that hold it, if any do. */
  private List<Keyed> given(List<Lying> fit) {
    Map<List<String>, List<Integer>> groups = new LinkedHashMap<>();
    Map<List<String>, List<Lying>> pieces = new LinkedHashMap<>();
    for (int i = 0; i < given().size(); i++) {
      for (List<Lying> of : shortest(fit, given().get(i).key)) {
        List<String> ids = of.stream().map(Lying::id).toList();
        groups.computeIfAbsent(ids, x -> new ArrayList<>()).add(i);
        pieces.put(ids, of);
      }
    }
    List<Keyed> found = new ArrayList<>();
    groups.forEach(
        (ids, group) -> {
          List<Stand> stands = group.stream().map(given()::get).toList();
          found.add(new Keyed(group.toString(), pieces.get(ids), stands));
        });
    return found;
  }

  /**
   * The shortest pieces that hold a key: of each sort that is good for the same stones, because
   * another head may need the very shortest. One choice of none where the yard has not got it: such
   * a key is ordered, and is no matter of the pile.
   */
  private List<List<Lying>> shortest(List<Lying> fit, long extent) {
    Map<List<Boolean>, List<Lying>> sorts = new LinkedHashMap<>();
    List<Lying> all = fit.stream().filter(p -> p.usable() >= extent).toList();
    for (Lying p : all) {
      sorts.computeIfAbsent(uses(p), u -> new ArrayList<>()).add(p);
    }
    int count = opening.count();
    if (all.size() < count) {
      return List.of(List.of());
    }
    Set<List<Lying>> found = new LinkedHashSet<>();
    found.add(all.subList(0, count));
    for (List<Lying> of : sorts.values()) {
      if (of.size() >= count) {
        found.add(of.subList(0, count));
      }
    }
    // Copies of a key may also be of several sorts.
    complete &= count == 1 || sorts.size() == 1;
    return List.copyOf(found);
  }

  private List<Boolean> uses(Lying p) {
    List<Boolean> uses = new ArrayList<>();
    for (Opening o : openings) {
      uses.add(yard.fits(p.item(), o, false));
      uses.add(o.head().key() != null && yard.fits(p.item(), o, true));
    }
    return uses;
  }

  /** The first of them that can be had, or null. */
  Keyed first(List<Lying> lying) {
    HeadSpec.Key key = opening.head().key();
    if (key == null || key.bottom() != null || key.top() != null) {
      List<Keyed> of = of(lying);
      return of.isEmpty() ? null : of.get(0);
    }
    List<Lying> fit = fit(lying);
    for (long w : widths(fit)) {
      Optional<Keyed> k = open(fit, w).findFirst();
      if (k.isPresent()) {
        return k.get();
      }
    }
    return null;
  }

  private List<Lying> fit(List<Lying> lying) {
    return lying.stream()
        .filter(p -> yard.fits(p.item(), opening, true))
        .sorted(Comparator.comparingLong(Lying::usable))
        .toList();
  }

  /** A key whose width is left open is as wide as one of the pieces. */
  private List<Long> widths(List<Lying> fit) {
    long target = job.grid().nearest(opening.head().stones().target());
    long min = job.grid().ceil(opening.head().stones().min());
    return fit.stream()
        .map(Lying::usable)
        .filter(w -> w >= min)
        .distinct()
        .sorted(Comparator.comparingLong((Long w) -> Math.abs(w - target)).thenComparing(w -> w))
        .toList();
  }

  private List<Keyed> open(List<Lying> fit) {
    return widths(fit).stream().flatMap(w -> open(fit, w)).toList();
  }

  private Stream<Keyed> open(List<Lying> fit, long width) {
    List<List<Lying>> of = shortest(fit, width).stream().filter(p -> !p.isEmpty()).toList();
    if (!of.isEmpty() && !open.containsKey(width)) {
      FlatHead head = read.apply(opening).head();
      open.put(width, head != null && head.fanned() ? fans(width) : upright(width));
    }
    List<Stand> stands = open.getOrDefault(width, List.of());
    return stands.isEmpty()
        ? Stream.empty()
        : of.stream().map(p -> new Keyed(Long.toString(width), p, stands));
  }

  /** Both halves of an upright key are whole ticks. */
  private List<Stand> upright(long usable) {
    Length width = job.grid().ticks(usable / 2 * 2);
    return stands(read.apply(KeyWidths.of(opening, width, width)).head());
  }

  /** For each striking point the widest key that a piece gives. */
  private List<Stand> fans(long usable) {
    Map<List<Long>, Stand> widest = new LinkedHashMap<>();
    for (long w = usable + ABOUT; w >= usable - ABOUT; w--) {
      Length top = job.grid().ticks(w);
      for (Stand s : stands(read.apply(KeyWidths.of(opening, null, top)).head())) {
        List<Long> at =
            List.of(s.left.firstEnd(), s.left.lastEnd(), s.right.firstEnd(), s.right.lastEnd());
        Stand before = widest.get(at);
        boolean asked = s.head.key(s.left.lines()).top().equals(top);
        if (s.key <= usable
            && (before == null || s.key > before.key || s.key == before.key && asked)) {
          widest.put(at, s);
        }
      }
    }
    return List.copyOf(widest.values());
  }

  /**
   * The striking points of a head: in a fan that follows its end, one for each end on each side.
   */
  static List<Stand> stands(FlatHead head) {
    List<Stand> out = new ArrayList<>();
    if (head == null) {
      return out;
    }
    FlatTerms.SideTerms l = head.terms().left();
    FlatTerms.SideTerms r = head.terms().right();
    for (SideCase c : head.cases(l, Double.NaN)) {
      for (SideCase other : head.cases(r, head.fanned() ? c.lines().striking() : Double.NaN)) {
        out.add(stand(head, c, other));
      }
    }
    boolean alike = out.stream().allMatch(s -> !head.fanned()) || sameEnds(head, l, r);
    for (SideCase c : alike ? List.<SideCase>of() : head.cases(r, Double.NaN)) {
      for (SideCase other : head.cases(l, c.lines().striking())) {
        Stand s = stand(head, other, c);
        boolean there =
            out.stream().anyMatch(o -> o.left.equals(s.left) && o.right.equals(s.right));
        if (!there) {
          out.add(s);
        }
      }
    }
    return out;
  }

  private static boolean sameEnds(FlatHead head, FlatTerms.SideTerms l, FlatTerms.SideTerms r) {
    return l.wall() == r.wall() && l.jamb() == r.jamb();
  }

  private static Stand stand(FlatHead head, SideCase left, SideCase right) {
    StoneExtents one = head.fanned() ? head.extents(left.lines(), Side.LEFT) : null;
    // Under a camber that is struck off the centre line the sides differ.
    StoneExtents other =
        head.fanned() && head.terms().lopsided() ? head.extents(right.lines(), Side.RIGHT) : one;
    return new Stand(
        head, side(head, left, one), side(head, right, other), head.keyExtent(left.lines()));
  }

  private static FlatSide side(FlatHead head, SideCase one, StoneExtents extents) {
    FlatTerms terms = head.terms();
    return new FlatSide(
        one, head.check(one.lines()), extents, terms.joint(), terms.bearing().target());
  }
}

package headcourse.layout.side;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The rhythm {@code mixed}: takes ends and numbers of stones in the order of their cost, |bearing −
 * target|, then |mean − target|, then what the seed says, and stops at the first that widths can be
 * found for. A depth-first search settles most; where it would take long, a table of all reachable
 * sums does, exactly. What may be wanting of spare, and how many stones may fit no blank, is asked
 * from nothing up, so the first that is found wants least.
 */
final class MixedSolver implements SideSolver {
  /** Stones tried for one candidate before the table is asked. */
  private static final long PATIENCE = 300;

  /** What is wanting is told apart no finer than a micrometre, pm. */
  private static final long FINE = 1_000_000;

  private final FlatTerms terms;
  private final FlatGeometry geometry;
  private final boolean fan;
  private final Map<Key, SumTable> tables = new HashMap<>();
  private final Map<Key, Asked> asked = new HashMap<>();
  private final Map<SideCase, Asked> plain = new HashMap<>();
  private List<SideCase> last = List.of();
  private List<Place> places = List.of();
  private long[] now = {0, 0};
  private long seed;
  private long steps;
  private long effort;

  MixedSolver(FlatTerms terms, FlatGeometry geometry) {
    this.terms = terms;
    this.geometry = geometry;
    this.fan = geometry.fanned();
  }

  @Override
  public long effort() {
    return effort;
  }

  private record Key(SideCase sides, long shortfall, int tooLong) {}

  private record Candidate(SideCase sides, End end, SideCost cost, long tie) {}

  private record Place(SideCase sides, End end, long off) {}

  private record Found(Choice choice, SideCost cost) {}

  @Override
  public SideResult solve(List<SideCase> cases, long sideSeed) {
    return solve(cases, sideSeed, SideCheck.ANY);
  }

  @Override
  public SideResult solve(List<SideCase> cases, long sideSeed, long most) {
    // Two sides under the same rules share what was worked out.
    if (!cases.equals(last)) {
      tables.clear();
      asked.clear();
      plain.clear();
      last = List.copyOf(cases);
    }
    seed = sideSeed;
    steps = 0;
    places = new ArrayList<>();
    for (SideCase c : last) {
      for (End e : c.ends()) {
        long off = Math.abs(e.bearing() - terms.bearing().target().picometres());
        places.add(new Place(c, e, off));
      }
    }
    places.sort(Comparator.comparingLong(Place::off));
    Found found = find(0, 0);
    long shortfall = 0;
    long unfit = 0;
    if (found == null) {
      shortfall = leastShortfall(most);
      if (shortfall < 0) {
        return SideResult.none(steps);
      }
      for (long lacking : unfits()) {
        unfit = lacking;
        found = find(shortfall, lacking);
        if (found != null) {
          break;
        }
      }
    }
    return new SideResult(found.choice(), shortfall, unfit, found.cost().bearingMm(), steps);
  }

  /** The least that any choice wants of spare, pm; −1 where none wants so little. */
  private long leastShortfall(long useful) {
    Found found = find(0, Long.MAX_VALUE);
    if (found != null) {
      return 0;
    }
    found = useful == 0 ? null : find(useful, Long.MAX_VALUE);
    if (found == null) {
      return -1;
    }
    long high = Spare.of(terms, fan, found.choice());
    // Nothing lies below what the ends alone want, and mostly nothing more is wanting.
    long ends = leastAtEnds();
    long low = Math.max(0, ends - 1);
    while (high - low > FINE) {
      long most = ends > low ? ends : (low + high) / 2;
      found = find(most, Long.MAX_VALUE);
      if (found == null) {
        low = most;
      } else {
        high = Math.min(most, Spare.of(terms, fan, found.choice()));
      }
    }
    return high;
  }

  private long leastAtEnds() {
    long least = Long.MAX_VALUE;
    for (Place p : places) {
      Spare spare = plain(p.sides()).check().spare();
      int n = CountRange.of(terms, p.sides().lines(), p.end()).least();
      least = Math.min(least, Math.max(spare.start(), spare.end(n, p.end())));
    }
    return least;
  }

  /** Numbers of stones that may fit no blank, from none up. */
  private List<Long> unfits() {
    TreeSet<Long> all = new TreeSet<>();
    for (Place p : places) {
      Blanks blanks = plain(p.sides()).blanks();
      CountRange counts = CountRange.of(terms, p.sides().lines(), p.end());
      for (int n = counts.least(); n <= counts.most(); n++) {
        all.add(blanks.lacking(n, p.end()));
        all.add(blanks.unfit(n, 0));
      }
    }
    for (long most = 0; !all.isEmpty() && most < all.last(); most += blanksStep()) {
      all.add(most);
    }
    return List.copyOf(all);
  }

  private long blanksStep() {
    return 2L * terms.opening().count();
  }

  private Asked plain(SideCase sides) {
    return plain.computeIfAbsent(sides, c -> ask(c, SideCheck.ANY, Asked.ANY));
  }

  private Asked ask(SideCase c, long shortfall, int tooLong) {
    return new Asked(
        new SideCheck(terms, c.lines(), fan, shortfall),
        new Blanks(terms, geometry, c.lines()),
        tooLong);
  }

  /**
   * The best that wants so much spare at most, and has so many stones at most that fit no blank.
   */
  private Found find(long shortfall, long unfit) {
    if (shortfall != now[0] || unfit != now[1]) {
      tables.clear();
      asked.clear();
      now = new long[] {shortfall, unfit};
    }
    for (int from = 0; from < places.size(); ) {
      int to = from;
      while (to < places.size() && places.get(to).off() == places.get(from).off()) {
        to++;
      }
      for (Candidate c : candidates(places.subList(from, to), shortfall, unfit)) {
        Choice choice = search(c, shortfall, unfit);
        if (choice != null) {
          return new Found(choice, c.cost());
        }
      }
      from = to;
    }
    return null;
  }

  private List<Candidate> candidates(List<Place> group, long shortfall, long unfit) {
    Neighbours rule = Neighbours.of(terms);
    List<Candidate> list = new ArrayList<>();
    for (Place p : group) {
      Asked own = plain(p.sides());
      Spare spare = own.check().spare();
      boolean counted = own.blanks().matter() && unfit != Long.MAX_VALUE;
      if (spare.start() > shortfall) {
        continue;
      }
      CountRange counts = CountRange.of(terms, p.sides().lines(), p.end());
      for (int n = counts.least(); n <= counts.most(); n++) {
        long widths = p.end().foot() - p.sides().lines().start() - n * terms.joint();
        if (widths >= rule.least(n)
            && widths <= rule.most(n)
            && spare.end(n, p.end()) <= shortfall
            && !(counted && own.blanks().lacking(n, p.end()) > unfit)) {
          SideCost cost = SideCost.of(terms, p.sides().lines(), p.end(), n, 0, 0);
          long tie = new SplitMix(seed * 31 + p.end().foot() * 1009 + n).next();
          list.add(new Candidate(p.sides(), p.end(), cost, tie));
        }
      }
    }
    list.sort(
        Comparator.comparing(Candidate::cost, SideCost::compareMean)
            .thenComparingLong(Candidate::tie));
    return list;
  }

  private Choice search(Candidate c, long shortfall, long unfit) {
    steps++;
    int count = c.cost().count();
    int tooLong =
        unfit == Long.MAX_VALUE
            ? Asked.ANY
            : Math.min(count, plain(c.sides()).blanks().mostTooLong(unfit));
    Key key = new Key(c.sides(), shortfall, tooLong);
    Asked own = asked.computeIfAbsent(key, k -> ask(k.sides(), k.shortfall(), k.tooLong()));
    SumTable table = tables.get(key);
    if (table == null) {
      boolean quick = tooLong == 0 || !own.counts();
      SequenceSearch first =
          new SequenceSearch(terms, c.sides(), c.end(), count, own, seed, quick ? PATIENCE : -1);
      Choice choice = quick ? first.find() : null;
      steps += first.nodes();
      effort += first.effort();
      if (quick && (choice != null || !first.gaveUp())) {
        return choice;
      }
      table = new SumTable(terms, c.sides(), own);
      tables.put(key, table);
    }
    long before = table.effort();
    Choice choice = table.trace(count, c.end(), seed);
    effort += table.effort() - before + terms.widths().max() - terms.widths().min();
    return choice;
  }
}

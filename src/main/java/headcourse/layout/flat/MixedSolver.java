package headcourse.layout.flat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The rhythm {@code mixed}: takes ends and numbers of stones in the order of their cost, |bearing −
 * target|, then |mean − target|, then what the seed says, and stops at the first that widths can be
 * found for. A depth-first search settles most; where it would take long, a table of all reachable
 * sums does, exactly.
 */
final class MixedSolver implements SideSolver {
  /** Stones tried for one candidate before the table is asked. */
  private static final long PATIENCE = 300;

  private final FlatTerms terms;
  private final boolean fan;
  private final Map<SideCase, SumTable> tables = new HashMap<>();
  private List<SideCase> last = List.of();
  private long steps;
  private long effort;

  MixedSolver(FlatTerms terms, FlatGeometry geometry) {
    this.terms = terms;
    this.fan = geometry.fanned();
  }

  @Override
  public long effort() {
    return effort;
  }

  private record Candidate(SideCase sides, End end, SideCost cost, long tie) {}

  private record Place(SideCase sides, End end, long off) {}

  @Override
  public SideResult solve(List<SideCase> cases, long seed) {
    // Two sides under the same rules share what was worked out.
    if (!cases.equals(last)) {
      tables.clear();
      last = List.copyOf(cases);
    }
    steps = 0;
    List<Place> places = new ArrayList<>();
    for (SideCase c : cases) {
      for (End e : c.ends()) {
        long off = Math.abs(e.bearing() - terms.bearing().target().picometres());
        places.add(new Place(c, e, off));
      }
    }
    places.sort(Comparator.comparingLong(Place::off));
    for (int from = 0; from < places.size(); ) {
      int to = from;
      while (to < places.size() && places.get(to).off() == places.get(from).off()) {
        to++;
      }
      for (Candidate c : candidates(places.subList(from, to), seed)) {
        Choice choice = search(c, seed);
        if (choice != null) {
          return new SideResult(choice, c.cost().bearingMm(), steps);
        }
      }
      from = to;
    }
    return new SideResult(null, 0, steps);
  }

  private List<Candidate> candidates(List<Place> places, long seed) {
    Neighbours rule = Neighbours.of(terms);
    List<Candidate> list = new ArrayList<>();
    for (Place p : places) {
      CountRange counts = CountRange.of(terms, p.sides().lines(), p.end());
      for (int n = counts.least(); n <= counts.most(); n++) {
        long widths = p.end().foot() - p.sides().lines().start() - n * terms.joint();
        if (widths >= rule.least(n) && widths <= rule.most(n)) {
          SideCost cost = SideCost.of(terms, p.sides().lines(), p.end(), n);
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

  private Choice search(Candidate c, long seed) {
    steps++;
    int count = c.cost().count();
    SumTable table = tables.get(c.sides());
    if (table == null) {
      SequenceSearch first =
          new SequenceSearch(terms, c.sides(), c.end(), count, fan, seed, PATIENCE);
      Choice choice = first.find();
      steps += first.nodes();
      effort += first.nodes() * 100;
      if (choice != null || !first.gaveUp()) {
        return choice;
      }
      table = new SumTable(terms, c.sides(), fan);
      tables.put(c.sides(), table);
    }
    long before = table.effort();
    Choice choice = table.trace(count, c.end(), seed);
    effort += table.effort() - before + terms.max() - terms.min();
    return choice;
  }
}

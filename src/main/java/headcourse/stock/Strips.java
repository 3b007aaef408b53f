package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.layout.yard.FromStock;
import headcourse.stock.cutting.Cost;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Puts soffit strips of one depth side by side, as many as a flat of the yard is high enough for: a
 * length is cut off the flat, ripped, and each strip cut to its own length. Those of nearly the
 * same length go together. More of them take less length, but need higher flats.
 */
final class Strips {
  private final Job job;
  private final List<Part> parts;

  Strips(Job job, List<Part> parts) {
    this.job = job;
    this.parts = List.copyOf(parts);
  }

  /**
   * The yard with so many strips side by side that the fewest parts are left without a blank, at
   * the least cost.
   *
   * @param gone pieces that were spoiled as stones chosen from the yard's pieces
   */
  Yard yard(List<FromStock.Taken> taken, Set<String> gone) {
    int most = most();
    // All of them together take no more steps than one plan may.
    Job share = job.withSteps(Math.max(1, job.steps() / most));
    Yard best = new Yard(share, crosscuts(most), taken);
    for (int n = most - 1; n >= 1; n--) {
      Yard other = new Yard(share, crosscuts(n), taken);
      best = cost(other, gone).compareTo(cost(best, gone)) < 0 ? other : best;
    }
    return best;
  }

  /** What its best plan costs, every part without a blank counted. */
  private static Cost cost(Yard yard, Set<String> gone) {
    Assignment plan = yard.solve(gone);
    long missing =
        plan.missing().stream().mapToLong(i -> yard.crosscuts().get(i).parts().size()).sum();
    return new Cost(missing, plan.cost().lead(), plan.cost().second());
  }

  /** Strips that can be ripped from each other. */
  private record Family(Length depth, Length thickness, Length gap) {}

  /** The most strips that the yard's flats allow side by side; 1 where there is nothing to rip. */
  int most() {
    return parts.stream().filter(Part::strip).mapToInt(this::most).max().orElse(1);
  }

  /**
   * The crosscuts: first what is no strip, then the strips.
   *
   * @param limit how many strips may lie side by side
   */
  List<Crosscut> crosscuts(int limit) {
    List<Crosscut> crosscuts = new ArrayList<>();
    Map<Family, List<Part>> families = new LinkedHashMap<>();
    for (Part p : parts) {
      if (p.strip()) {
        Family f = new Family(p.face(), p.thickness(), gap(p));
        families.computeIfAbsent(f, k -> new ArrayList<>()).add(p);
      } else {
        crosscuts.add(Crosscut.of(p));
      }
    }
    families.forEach(
        (family, strips) -> {
          int n = Math.min(limit, most(strips.get(0)));
          if (n > 1) {
            strips.sort(Comparator.comparing(Part::extent).reversed());
          }
          for (int i = 0; i < strips.size(); i += n) {
            crosscuts.add(
                Crosscut.of(strips.subList(i, Math.min(i + n, strips.size())), family.gap()));
          }
        });
    return crosscuts;
  }

  private int most(Part strip) {
    int most = 1;
    for (Stock.Item item : job.stock().items()) {
      if (strip.goesOn(item)) {
        most = Math.max(most, beside(item.face(), strip.face(), gap(strip)));
      }
    }
    return most;
  }

  private static int beside(Length face, Length depth, Length gap) {
    int n = 1;
    while (Crosscut.face(n + 1, depth, gap).compareTo(face) <= 0) {
      n++;
    }
    return n;
  }

  /**
   * What lies between two strips: one rip, or for mitred ones a plumb rip and one at 45°, which is
   * √2 as wide on the face.
   */
  private Length gap(Part p) {
    Length kerf = job.tools().saw().kerf();
    return p.mitred() ? kerf.plus(Length.mm(kerf.mm() * Math.sqrt(2))) : kerf;
  }
}

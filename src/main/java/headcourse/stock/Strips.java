package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Puts soffit strips of one depth side by side, as many as a flat of the yard is high enough for: a
 * length is cut off the flat, ripped, and each strip cut to its own length. Those of nearly the
 * same length go together.
 */
final class Strips {
  private final Job job;
  private final List<Part> parts;

  Strips(Job job, List<Part> parts) {
    this.job = job;
    this.parts = List.copyOf(parts);
  }

  /** Strips that can be ripped from each other. */
  private record Family(Length depth, Length thickness, Length gap) {}

  /** The most strips that the yard's flats allow side by side; 1 where there is nothing to rip. */
  int most() {
    return parts.stream().filter(Part::strip).mapToInt(this::most).max().orElse(1);
  }

  /**
   * The lots: first what is no strip, then the strips.
   *
   * @param limit how many strips may lie side by side
   */
  List<Lot> lots(int limit) {
    List<Lot> lots = new ArrayList<>();
    Map<Family, List<Part>> families = new LinkedHashMap<>();
    for (Part p : parts) {
      if (p.strip()) {
        Family f = new Family(p.face(), p.thickness(), gap(p));
        families.computeIfAbsent(f, k -> new ArrayList<>()).add(p);
      } else {
        lots.add(Lot.of(p));
      }
    }
    families.forEach(
        (family, strips) -> {
          int n = Math.min(limit, most(strips.get(0)));
          if (n > 1) {
            strips.sort(Comparator.comparing(Part::extent).reversed());
          }
          for (int i = 0; i < strips.size(); i += n) {
            lots.add(Lot.of(strips.subList(i, Math.min(i + n, strips.size())), family.gap()));
          }
        });
    return lots;
  }

  private int most(Part strip) {
    int most = 1;
    for (Stock.Item item : job.stock().items()) {
      if (StockPlanner.takes(item, strip)) {
        most = Math.max(most, beside(item.face(), strip.face(), gap(strip)));
      }
    }
    return most;
  }

  static int beside(Length face, Length depth, Length gap) {
    int n = 1;
    while (Lot.face(n + 1, depth, gap).compareTo(face) <= 0) {
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

package headcourse.stock.cutting;

import headcourse.geom.Point;
import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Random cutting problems of the kinds that jobs have; lengths in mm before they become nm. */
final class RandomCutting {
  private RandomCutting() {}

  static final double IN = 25.4;
  static final double KERF = IN / 8;

  /** Square stones of mixed widths, one kind of blank or more. */
  static CuttingProblem soldiers(Random r, int stones, int kinds) {
    List<Profile> shapes = new ArrayList<>();
    int types = 1 + r.nextInt(Math.min(stones, 24));
    for (int i = 0; i < types; i++) {
      shapes.add(Profile.rectangle((64 + r.nextInt(100)) / 16.0 * IN, 12 * IN));
    }
    return of(r, shapes, stones, kinds, false);
  }

  /** A fan: every joint points at one place below. */
  static CuttingProblem fan(Random r, int aSide, int kinds, boolean turnable) {
    double depth = (36 + r.nextInt(60)) * IN;
    double h = (8 + r.nextInt(9)) * IN;
    List<Profile> shapes = new ArrayList<>();
    double x = (2 + r.nextInt(3)) * IN;
    for (int i = 0; i < aSide; i++) {
      double w = (64 + r.nextInt(80)) / 16.0 * IN;
      double f = (depth + h) / depth;
      shapes.add(quad(x, x + w, (x + w) * f, x * f, h));
      shapes.add(quad(0 - x - w, 0 - x, 0 - x * f, 0 - (x + w) * f, h));
      x += w;
    }
    return of(r, shapes, shapes.size(), kinds, turnable);
  }

  /** Rakes, squares and copies in one yard, a third of them turnable, on three kinds of blank. */
  static CuttingProblem mixed(Random r, int parts) {
    List<Profile> shapes = new ArrayList<>();
    List<Boolean> turnable = new ArrayList<>();
    while (shapes.size() < parts) {
      double w = (64 + r.nextInt(80)) / 16.0 * IN;
      double lean = r.nextInt(60);
      double high = (6 + r.nextInt(6)) * IN;
      shapes.add(
          r.nextInt(3) == 0
              ? Profile.rectangle(w, high)
              : quad(lean, lean + w + 80, 200 + r.nextInt(300), 0, high));
      turnable.add(r.nextInt(3) == 0);
    }
    return of(r, shapes, parts + parts / 3, 3, 30, turnable);
  }

  /** Forty stones of fans go on each blank. */
  static CuttingProblem longBlanks(Random r, int fans) {
    List<Profile> shapes = new ArrayList<>();
    for (int f = 0; f < fans; f++) {
      double depth = (36 + r.nextInt(60)) * IN;
      double x = (2 + r.nextInt(3)) * IN;
      for (int i = 0; i < 4; i++) {
        double w = (64 + r.nextInt(80)) / 16.0 * IN;
        double by = 1 + 10 * IN / depth;
        shapes.add(quad(x, x + w, (x + w) * by, x * by, 10 * IN));
        shapes.add(quad(0 - x - w, 0 - x, 0 - x * by, 0 - (x + w) * by, 10 * IN));
        x += w;
      }
    }
    return of(r, shapes, shapes.size(), 2, 180, shapes.stream().map(s -> false).toList());
  }

  private static Profile quad(double a, double b, double c, double d, double h) {
    double x = Math.min(a, d);
    return new Profile(
        List.of(
            new Point(a - x, 0), new Point(b - x, 0), new Point(c - x, h), new Point(d - x, h)));
  }

  private static CuttingProblem of(
      Random r, List<Profile> shapes, int stones, int kinds, boolean turnable) {
    return of(r, shapes, stones, kinds, 18, shapes.stream().map(s -> turnable).toList());
  }

  private static CuttingProblem of(
      Random r, List<Profile> shapes, int stones, int kinds, int least, List<Boolean> turnable) {
    int n = shapes.size();
    int[] demand = new int[n];
    Arrays.fill(demand, 1);
    for (int i = n; i < stones; i++) {
      demand[r.nextInt(n)]++;
    }
    Nesting nesting = new Nesting(shapes, turnable, KERF);
    List<Bin> bins = new ArrayList<>();
    boolean priced = r.nextBoolean() && kinds > 1;
    boolean[] takes = new boolean[n];
    Arrays.fill(takes, true);
    for (int k = 0; k < kinds; k++) {
      double length = (least + r.nextInt(40)) * IN;
      long nm = Math.round((length - IN / 4) * 1e6);
      int count = k == 0 ? 10_000 : 1 + r.nextInt(6);
      if (k == 0) {
        long most = 0;
        for (long e : nesting.extent) {
          most = Math.max(most, e);
        }
        nm = Math.max(nm, most + 1000);
      }
      long price = priced ? Math.round(length * (0.8 + 0.4 * r.nextDouble()) / IN) * 100 : 0;
      long area = Math.round(length * 350 / 100);
      Cost cost = priced ? new Cost(0, price, CuttingProblem.BLANK + area) : new Cost(0, 1, area);
      bins.add(new Bin(k, nm, Math.min(count, stones), cost, takes));
    }
    return new CuttingProblem(demand, nesting, bins);
  }
}

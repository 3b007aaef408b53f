package headcourse.stock.cutting;

import headcourse.geom.Point;
import headcourse.stock.cutting.CuttingProblem.Bin;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Kinds of random cutting problems that jobs have, each with yards of every sort. */
enum CuttingFamily {
  /** Upright stones of mixed widths. */
  SOLDIERS,
  /** A jack head: every joint points at one place below. */
  FAN,
  /** A raked key between upright stones, several openings alike. */
  EASED,
  /** Jack heads over several openings, some of them alike. */
  COPIES,
  /** Voussoirs of a round head, all alike but for the key. */
  ARCH,
  /** Faces and soffits of stones made of flats, which may be turned, with some that may not. */
  TURNED;

  private static final double IN = 25.4;
  private static final double[] KERFS = {0, IN / 8, IN * 3 / 16};

  /** A problem of about so many parts, never more. */
  CuttingProblem make(Random r, int stones) {
    double kerf = KERFS[r.nextInt(KERFS.length)];
    Rows rows = new Rows();
    switch (this) {
      case SOLDIERS -> soldiers(r, stones, rows);
      case FAN -> fan(r, stones / 2, 1, false, rows);
      case EASED -> eased(r, stones, rows);
      case COPIES -> copies(r, stones, rows);
      case ARCH -> arch(r, stones, rows);
      case TURNED -> turned(r, stones, rows);
    }
    return rows.problem(r, kerf);
  }

  private static double width(Random r) {
    return (64 + r.nextInt(80)) / 16.0 * IN;
  }

  private static void soldiers(Random r, int stones, Rows rows) {
    int types = 1 + r.nextInt(Math.min(stones, 24));
    double high = 12 * IN;
    for (int i = 0; i < types; i++) {
      int some = i == types - 1 ? stones - rows.parts() : 1 + r.nextInt(2 * stones / types);
      some = Math.min(some, stones - rows.parts());
      if (some > 0) {
        rows.add(Profile.rectangle(width(r), high), some, false);
      }
    }
  }

  private static void fan(Random r, int aSide, int copies, boolean turnable, Rows rows) {
    double depth = (36 + r.nextInt(60)) * IN;
    double h = (8 + r.nextInt(9)) * IN;
    double f = (depth + h) / depth;
    double x = (2 + r.nextInt(3)) * IN;
    for (int i = 0; i < aSide; i++) {
      double w = width(r);
      rows.add(quad(x, x + w, (x + w) * f, x * f, h), copies, turnable);
      rows.add(quad(0 - x - w, 0 - x, 0 - x * f, 0 - (x + w) * f, h), copies, turnable);
      x += w;
    }
  }

  private static void eased(Random r, int stones, Rows rows) {
    double h = (10 + r.nextInt(5)) * IN;
    int each = Math.min(stones, 5 + r.nextInt(9));
    double rake = (1 + r.nextInt(4)) * IN;
    double w = width(r);
    int copies = Math.max(1, stones / each);
    rows.add(quad(rake, rake + w, w + 2 * rake, 0, h + r.nextInt(2) * 2 * IN), copies, false);
    double beside = width(r);
    rows.add(quad(0, beside, beside, rake, h), copies, false);
    rows.add(quad(0, beside, beside - rake, 0, h), copies, false);
    for (int i = 3; i < each; i++) {
      rows.add(Profile.rectangle(width(r), h), copies, false);
    }
  }

  private static void copies(Random r, int stones, Rows rows) {
    while (stones - rows.parts() >= 4) {
      int left = stones - rows.parts();
      int aSide = 1 + r.nextInt(Math.min(8, left / 2));
      fan(r, aSide, 1 + r.nextInt(Math.min(4, left / (2 * aSide))), false, rows);
    }
  }

  private static void arch(Random r, int stones, Rows rows) {
    double h = (8 + r.nextInt(9)) * IN;
    double w = width(r);
    double rake = w * (0.05 + 0.2 * r.nextDouble());
    boolean flat = r.nextInt(3) == 0;
    rows.add(quad(rake, rake + w, w + 2 * rake, 0, h), Math.max(1, stones - 3), flat);
    rows.add(quad(rake, rake + w, w + 2 * rake, 0, h + 3 * IN), Math.min(2, stones), flat);
  }

  private static void turned(Random r, int stones, Rows rows) {
    int both = r.nextInt(stones / 2);
    fan(r, Math.max(1, (stones - both) / 4), 1, true, rows);
    int faces = rows.parts();
    for (int i = 0; i < faces / 2 && rows.parts() < stones; i++) {
      rows.add(Profile.rectangle(width(r), 4 * IN), 1, true);
    }
    int left = (stones - rows.parts()) / 2;
    fan(r, left, 1, false, rows);
  }

  private static Profile quad(double a, double b, double c, double d, double h) {
    double x = Math.min(a, d);
    return new Profile(
        List.of(
            new Point(a - x, 0), new Point(b - x, 0), new Point(c - x, h), new Point(d - x, h)));
  }

  /** Parts so far. */
  private static final class Rows {
    private final List<Profile> shapes = new ArrayList<>();
    private final List<Integer> demand = new ArrayList<>();
    private final List<Boolean> turnable = new ArrayList<>();

    void add(Profile p, int count, boolean turns) {
      shapes.add(p);
      demand.add(count);
      turnable.add(turns);
    }

    int parts() {
      return demand.stream().mapToInt(d -> d).sum();
    }

    /** With one to three kinds of blank, with prices or without, as many as needed or not. */
    CuttingProblem problem(Random r, double kerf) {
      Nesting nesting = new Nesting(shapes, turnable, kerf);
      int kinds = 1 + r.nextInt(3);
      boolean priced = r.nextBoolean();
      boolean limited = r.nextInt(4) == 0;
      double high = shapes.stream().mapToDouble(Profile::height).max().orElse(0);
      double longest = java.util.Arrays.stream(nesting.extent).max().orElse(0) / 1e6;
      double all = 0;
      for (int t = 0; t < shapes.size(); t++) {
        all += demand.get(t) * (shapes.get(t).meanWidth() + kerf);
      }
      List<Bin> bins = new ArrayList<>();
      for (int k = 0; k < kinds; k++) {
        double length = (14 + r.nextInt(44)) * IN;
        length = k == 0 ? Math.max(length, longest + IN / 2) : length;
        boolean[] takes = new boolean[shapes.size()];
        boolean low = k > 0 && r.nextInt(4) == 0;
        for (int t = 0; t < takes.length; t++) {
          takes[t] = !low || shapes.get(t).height() < high - 1;
        }
        long price = Math.round(length * (0.8 + 0.4 * r.nextDouble()) / IN * 2) * 50;
        long area = Math.round(length * (high + 2 * IN) / 100);
        Cost cost = priced ? new Cost(0, price, CuttingProblem.BLANK + area) : new Cost(0, 1, area);
        int count = parts();
        if (limited) {
          count = (int) Math.max(1, Math.round(all / length / kinds * (0.8 + r.nextDouble())));
        } else if (k > 0 && r.nextBoolean()) {
          count = 1 + r.nextInt(6);
        }
        bins.add(
            new Bin(k, Math.round((length - IN / 4) * 1e6), Math.min(count, parts()), cost, takes));
      }
      return new CuttingProblem(
          demand.stream().mapToInt(d -> d).toArray(), nesting, List.copyOf(bins));
    }
  }
}

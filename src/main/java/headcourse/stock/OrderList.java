package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.stock.StockPlan.CutBlank;
import headcourse.stock.StockPlan.OrderLine;
import headcourse.units.Length;
import headcourse.units.Units;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Writes down what is to be bought, with spares. */
final class OrderList {
  private final Job job;

  OrderList(Job job) {
    this.job = job;
  }

  /**
   * The lines: what is made to order, then the sizes that the parts need, highest first.
   *
   * @param fresh the blanks of the plan from which nothing was cut yet
   * @param parts parts that need a blank each of their own
   */
  List<OrderLine> of(List<CutBlank> fresh, List<Part> parts) {
    List<OrderLine> lines = new ArrayList<>();
    for (Stock.Item i : job.stock().items()) {
      int used = (int) fresh.stream().filter(b -> b.stock().equals(i.mark())).count();
      if (i.toOrder() && used > 0) {
        int spares = spares(used);
        int count = used + spares;
        lines.add(
            new OrderLine(
                i.mark(),
                i.kind(),
                i.length(),
                i.face(),
                i.returnLeg(),
                i.thickness(),
                count,
                spares,
                i.price() * count,
                i.lead(),
                orderBy(i.lead())));
      }
    }
    // Alike in face, return and thickness: a longer piece stands in for any shorter one, so the
    // spares of such a family are of its longest length.
    TreeMap<Family, TreeMap<Length, Integer>> needs = new TreeMap<>(Family.ORDER);
    for (Part p : parts) {
      Length trim = job.stock().trim();
      Length back = p.returnLeg().isPositive() ? p.returnLeg().plus(trim) : Length.ZERO;
      Family f = new Family(p.kind(), up(p.face().plus(trim)), up(back), p.thickness());
      needs
          .computeIfAbsent(f, x -> new TreeMap<>(Comparator.reverseOrder()))
          .merge(blank(p), 1, Integer::sum);
    }
    needs.forEach((family, lengths) -> lines.addAll(lines(family, lengths)));
    return lines;
  }

  private record Family(Stock.Kind kind, Length face, Length returnLeg, Length thickness) {
    static final Comparator<Family> ORDER =
        Comparator.comparing(Family::kind)
            .thenComparing(Family::face, Comparator.reverseOrder())
            .thenComparing(Family::returnLeg, Comparator.reverseOrder())
            .thenComparing(Family::thickness);
  }

  private List<OrderLine> lines(Family f, TreeMap<Length, Integer> lengths) {
    int spares = spares(lengths.values().stream().mapToInt(n -> n).sum());
    List<OrderLine> lines = new ArrayList<>();
    for (var e : lengths.entrySet()) {
      lines.add(
          new OrderLine(
              "",
              f.kind,
              e.getKey(),
              f.face,
              f.returnLeg,
              f.thickness,
              e.getValue() + spares,
              spares,
              0,
              null,
              ""));
      spares = 0;
    }
    return lines;
  }

  /** The last day to order for the day of setting; empty where the job leaves it open. */
  private String orderBy(Integer lead) {
    String setting = job.info().settingDate();
    return lead == null || setting.isEmpty()
        ? ""
        : LocalDate.parse(setting).minusDays(lead).toString();
  }

  /** Whole pieces, at least one; none where the job asks for none. */
  private int spares(int count) {
    double share = job.stock().spare();
    return count == 0 || share <= 0 ? 0 : (int) Math.max(1, Math.ceil(count * share - 1e-9));
  }

  /**
   * Length of a blank that does for a part: with its clean cuts, or with the job's own allowance if
   * that is more, up to a whole inch or 10 mm.
   */
  Length blank(Part part) {
    Length clean = job.tools().saw().cleanCut().times(2);
    Length least = part.extent().plus(clean.max(job.stock().trim()));
    long step = job.units() == Units.INCH ? Length.PM_PER_INCH : 10 * Length.PM_PER_MM;
    return new Length(step * -Math.floorDiv(-least.picometres(), step));
  }

  private Length up(Length length) {
    return job.grid().ticks(job.grid().ceil(length));
  }
}

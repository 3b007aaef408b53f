package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.stock.StockPlan.Measure;
import headcourse.stock.StockPlan.Reason;
import headcourse.stock.StockPlan.Shortage;
import headcourse.stock.StockPlan.Unfit;
import headcourse.stock.StockPlan.Why;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Says why the yard has no blank for a part. */
final class UnfitReason {
  private final Job job;

  UnfitReason(Job job) {
    this.job = job;
  }

  /** Which measure is short, and the least size that would do. */
  Unfit of(Part part) {
    Length length = up(part.extent().plus(job.tools().saw().cleanCut().times(2)));
    Length face = up(part.face());
    Length back = up(part.returnLeg());
    return new Unfit(part.stone(), part.of(), reason(part, length), length, face, back);
  }

  private Length up(Length l) {
    // A nanometre of rounding in the geometry never asks for a tick more.
    return job.grid().ticks(job.grid().ceil(l.minus(new Length(2000))));
  }

  private Reason reason(Part part, Length length) {
    List<Stock.Item> kind =
        job.stock().items().stream().filter(i -> i.kind() == part.kind()).toList();
    if (kind.isEmpty()) {
      return because(Why.NO_KIND, part, List.of());
    }
    List<Stock.Item> thick =
        kind.stream().filter(i -> i.thickness().equals(part.thickness())).toList();
    if (thick.isEmpty()) {
      return because(Why.NO_THICKNESS, part, List.of());
    }
    List<Shortage> shorts = new ArrayList<>();
    shortOf(thick, length, Stock.Item::length, shorts, Measure.LENGTH);
    shortOf(thick, up(part.face()), Stock.Item::face, shorts, Measure.FACE);
    if (part.kind() == Stock.Kind.CORNER) {
      shortOf(thick, up(part.returnLeg()), Stock.Item::returnLeg, shorts, Measure.RETURN);
    }
    if (!shorts.isEmpty()) {
      return because(Why.SHORT, part, shorts);
    }
    boolean one = thick.stream().anyMatch(i -> part.goesOn(i) && i.length().compareTo(length) >= 0);
    return because(one ? Why.TAKEN : Why.NOT_AT_ONCE, part, List.of());
  }

  private static Reason because(Why why, Part part, List<Shortage> shorts) {
    return new Reason(why, part.kind(), part.thickness(), shorts);
  }

  private static void shortOf(
      List<Stock.Item> items,
      Length need,
      Function<Stock.Item, Length> of,
      List<Shortage> out,
      Measure measure) {
    Length most = items.stream().map(of).reduce(Length.ZERO, Length::max);
    if (most.compareTo(need) < 0) {
      out.add(new Shortage(measure, need, most));
    }
  }
}

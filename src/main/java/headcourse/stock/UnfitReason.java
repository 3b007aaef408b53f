package headcourse.stock;

import headcourse.job.Job;
import headcourse.job.Stock;
import headcourse.stock.StockPlan.Unfit;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Says why the yard has no blank for a part. */
final class UnfitReason {
  private final Job job;
  private final LengthFormat format;

  UnfitReason(Job job) {
    this.job = job;
    this.format = new LengthFormat(job.units(), job.grid());
  }

  /** Which measure is short, and the least size that would do. */
  Unfit of(Part part) {
    Length length = up(part.extent().plus(job.tools().saw().cleanCut().times(2)));
    Length face = up(part.face());
    Length back = up(part.returnLeg());
    return new Unfit(part.stone(), reason(part, length), length, face, back);
  }

  private Length up(Length l) {
    // A nanometre of rounding in the geometry never asks for a tick more.
    return job.grid().ticks(job.grid().ceil(l.minus(new Length(2000))));
  }

  private String reason(Part part, Length length) {
    boolean corner = part.kind() == Stock.Kind.CORNER;
    String what = corner ? "corner" : "flat";
    List<Stock.Item> kind =
        job.stock().items().stream().filter(i -> i.kind() == part.kind()).toList();
    if (kind.isEmpty()) {
      return "there is no " + what + " in the yard";
    }
    List<Stock.Item> thick =
        kind.stream().filter(i -> i.thickness().equals(part.thickness())).toList();
    if (thick.isEmpty()) {
      return "no " + what + " is " + format.plainWithUnit(part.thickness()) + " thick";
    }
    List<String> shorts = new ArrayList<>();
    shortOf(thick, length, Stock.Item::length, shorts, corner ? "an arris" : "a length");
    shortOf(thick, up(part.face()), Stock.Item::face, shorts, corner ? "a face leg" : "a height");
    if (corner) {
      shortOf(thick, up(part.returnLeg()), Stock.Item::returnLeg, shorts, "a return leg");
    }
    if (!shorts.isEmpty()) {
      return "no " + what + " has " + String.join(" or ", shorts);
    }
    boolean one =
        thick.stream()
            .anyMatch(i -> StockPlanner.takes(i, part) && i.length().compareTo(length) >= 0);
    return one
        ? "every " + what + " that it fits is taken by other stones"
        : "no one " + what + " has all its measures at once";
  }

  private void shortOf(
      List<Stock.Item> items,
      Length need,
      Function<Stock.Item, Length> of,
      List<String> out,
      String words) {
    Length most = items.stream().map(of).reduce(Length.ZERO, Length::max);
    if (most.compareTo(need) < 0) {
      out.add(
          words
              + " of "
              + format.plainWithUnit(need)
              + " (longest "
              + format.plainWithUnit(most)
              + ")");
    }
  }
}

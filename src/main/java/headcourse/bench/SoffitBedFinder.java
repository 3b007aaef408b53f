package headcourse.bench;

import headcourse.job.Job;
import headcourse.job.Measured;
import headcourse.layout.FaceEdge.Where;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/** Finds the bed between each return and the rough head. */
final class SoffitBedFinder {
  private final Length least;
  private final List<Measured.Level> levels;
  private final Length low;

  private SoffitBedFinder(Length least, List<Measured.Level> levels) {
    this.least = least;
    this.levels = levels;
    this.low =
        levels.stream().map(Measured.Level::up).min(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  /**
   * The beds of a head. Between the places where levels were taken the rough head runs straight;
   * beyond the outmost it stays level. A key that hangs down has as much more bed over it.
   */
  static SoffitBed find(Job job, HeadLayout head, List<Piece> pieces) {
    Measured m = head.opening().measured();
    List<Measured.Level> levels = m == null ? List.of() : m.soffit();
    SoffitBedFinder finder = new SoffitBedFinder(job.wall().bed(), levels);
    List<BedUnder> under = new ArrayList<>();
    for (Piece p : pieces) {
      if (p.leg().depth().isPositive()) {
        under.add(finder.under(p));
      }
    }
    return new SoffitBed(!levels.isEmpty(), finder.low.negated(), under);
  }

  private BedUnder under(Piece p) {
    StoneFrame frame = StoneFrame.of(p.stone());
    Side side = p.stone().side();
    boolean cut = p.leg().relief().isPositive();
    double left = cut && side == Side.LEFT ? p.leg().seatFrom() : frame.low(Where.LEFT).x();
    double right = cut && side == Side.RIGHT ? p.leg().seatFrom() : frame.low(Where.RIGHT).x();
    double hangs =
        side == Side.CENTRE
            ? Math.max(0, 0 - Math.min(frame.lowerLeft().y(), frame.lowerRight().y()))
            : 0;
    double[] all =
        DoubleStream.concat(
                DoubleStream.of(left, right),
                levels.stream().mapToDouble(l -> l.at().mm()).filter(x -> x > left && x < right))
            .map(x -> at(x) + hangs)
            .toArray();
    return new BedUnder(
        p.stone().mark(),
        Length.mm(all[0]),
        Length.mm(all[1]),
        Length.mm(DoubleStream.of(all).min().orElseThrow()),
        Length.mm(DoubleStream.of(all).max().orElseThrow()));
  }

  private double at(double x) {
    return least.mm() + up(x) - low.mm();
  }

  private double up(double x) {
    if (levels.isEmpty()) {
      return 0;
    }
    Measured.Level last = levels.get(0);
    for (Measured.Level l : levels) {
      if (x <= l.at().mm()) {
        double run = l.at().mm() - last.at().mm();
        double t = run < 1e-9 ? 1 : (x - last.at().mm()) / run;
        return last.up().mm() + (l.up().mm() - last.up().mm()) * Math.max(0, t);
      }
      last = l;
    }
    return last.up().mm();
  }
}

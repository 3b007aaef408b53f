package headcourse.rules;

import headcourse.bench.BedUnder;
import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.job.Job;
import java.util.List;

/** Counts mortar: each area times its thickness, identical openings counted, and waste. */
final class MortarTakeOff {
  /** Mortar mixed over (common practice, no source). */
  static final double WASTE = 0.1;

  private static final double MM3_PER_M3 = 1e9;

  private MortarTakeOff() {}

  static Mortar of(Job job, List<HeadWork> heads) {
    double face = 0;
    double soffit = 0;
    double joints = 0;
    for (HeadWork head : heads) {
      int count = head.layout().opening().count();
      for (Piece p : head.pieces()) {
        face += count * p.mass().areaM2();
        soffit += count * soffit(job, head, p);
      }
      joints += count * joints(job, head.pieces());
    }
    double bed = face * job.wall().bed().mm() / 1000;
    double scratch = face * job.wall().scratch().mm() / 1000;
    double set = bed + scratch + soffit + joints;
    return new Mortar(bed, scratch, soffit, joints, set * WASTE);
  }

  /**
   * Over the inside of the return, less its relief, or over what covers the soffit instead; as
   * thick as a measured rough head asks.
   */
  private static double soffit(Job job, HeadWork head, Piece p) {
    double deep = Math.max(0, p.leg().depth().minus(p.thickness()).mm());
    double wide = Math.max(0, p.stone().bottom().minus(p.leg().relief()).mm());
    double thick =
        head.bed()
            .of(p.stone().mark())
            .filter(b -> head.bed().measured())
            .map(MortarTakeOff::mean)
            .orElse(job.wall().bed().mm());
    double apart = 0;
    if (p.leg().depth().isZero()) {
      apart = p.soffitPieces().stream().mapToDouble(s -> s.underside().mm() * s.depth().mm()).sum();
    }
    return (deep * wide + apart) * thick / MM3_PER_M3;
  }

  private static double mean(BedUnder b) {
    return (b.left().mm() + b.right().mm()) / 2;
  }

  /** Stones run from left to right; each joint is as long as the shorter of its two edges. */
  private static double joints(Job job, List<Piece> pieces) {
    double width = job.setting().joint().mm();
    if (width == 0 || pieces.isEmpty()) {
      return 0;
    }
    Piece last = pieces.get(pieces.size() - 1);
    double mm2 = joint(pieces.get(0).measures().leftEdge().mm(), pieces.get(0), 0);
    mm2 += joint(last.measures().rightEdge().mm(), last, 0);
    for (int i = 0; i + 1 < pieces.size(); i++) {
      Piece a = pieces.get(i);
      Piece b = pieces.get(i + 1);
      double along = Math.min(a.measures().rightEdge().mm(), b.measures().leftEdge().mm());
      mm2 += joint(along, a, Math.min(deep(a), deep(b)));
    }
    return mm2 * width / MM3_PER_M3;
  }

  /** The face's edge, and that of the return behind it. */
  private static double joint(double along, Piece p, double deep) {
    return (along + deep) * p.thickness().mm();
  }

  /** How far the return stands behind the face; nothing where all of it is cut away. */
  private static double deep(Piece p) {
    boolean gone = p.leg().relief().compareTo(p.stone().bottom()) >= 0;
    return gone ? 0 : Math.max(0, p.leg().depth().minus(p.thickness()).mm());
  }
}

package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.job.HeadSpec.Soffit;
import headcourse.job.Job;
import headcourse.units.Length;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Counts what the whole job takes. */
public final class MaterialsTakeOff {
  /** What an 80 lb bag of mortar yields, m³: 0.67 ft³ (from memory; makers print 0.67 to 0.7). */
  static final double BAG_M3 = 0.67 * Figures.M3_PER_FT3;

  /** Wet mortar, kg/m³: 130 lb/ft³ (from memory). */
  static final double WET_MORTAR = 130 * Figures.KG_PER_LB / Figures.M3_PER_FT3;

  private MaterialsTakeOff() {}

  /**
   * What the job takes, identical openings counted. The screws by length hold those through soffit
   * pieces as well, their number does not.
   */
  public static Materials of(Job job, List<HeadWork> heads) {
    int stones = 0;
    double faceM2 = 0;
    double stoneKg = 0;
    double arrisMm = 0;
    SortedMap<Length, Integer> screws = new TreeMap<>();
    for (HeadWork head : heads) {
      int count = head.layout().opening().count();
      boolean corners = head.layout().opening().head().soffit() == Soffit.RETURNED;
      for (Piece p : head.pieces()) {
        stones += count;
        faceM2 += count * p.mass().areaM2();
        stoneKg += count * p.mass().kg();
        if (corners && p.leg().depth().isPositive()) {
          arrisMm += count * p.stone().bottom().mm();
        }
        soffitScrews(p).forEach(l -> screws.merge(l, count, Integer::sum));
        for (Notch n : p.notches()) {
          if (n.screw() != null) {
            screws.merge(n.screw(), count, Integer::sum);
          }
        }
      }
    }
    Mortar mortar = MortarTakeOff.of(job, heads);
    return new Materials(
        stones,
        faceM2,
        stoneKg,
        faceM2 > 0 ? (stoneKg + apartKg(heads) + mortar.set() * WET_MORTAR) / faceM2 : 0,
        mortar,
        (int) Math.ceil(mortar.mixed() / BAG_M3 - 1e-9),
        screws.values().stream().mapToInt(Integer::intValue).sum() - soffitScrews(heads),
        screws.entrySet().stream()
            .map(e -> new Materials.ScrewCount(e.getKey(), e.getValue()))
            .toList(),
        arrisMm / 1000);
  }

  /** How many screws go up through soffit pieces, beside those through the stones' edges. */
  public static int soffitScrews(List<HeadWork> heads) {
    int screws = 0;
    for (HeadWork head : heads) {
      for (Piece p : head.pieces()) {
        screws += head.layout().opening().count() * (int) soffitScrews(p).count();
      }
    }
    return screws;
  }

  private static Stream<Length> soffitScrews(Piece p) {
    return p.soffitPieces().stream()
        .flatMap(s -> s.notches().stream())
        .map(n -> n.anchor().screw())
        .filter(Objects::nonNull);
  }

  /** Mass of the soffit pieces that their stones' masses leave out: those under a V, kg. */
  public static double apartKg(List<HeadWork> heads) {
    double kg = 0;
    for (HeadWork head : heads) {
      for (Piece p : head.pieces()) {
        if (p.leg().depth().isZero()) {
          kg +=
              head.layout().opening().count()
                  * p.soffitPieces().stream().mapToDouble(SoffitPiece::massKg).sum();
        }
      }
    }
    return kg;
  }

  /** What the mortar of one opening's head weighs while it is wet, kg; waste is not in it. */
  public static double mortarKg(Job job, HeadWork head) {
    double all = MortarTakeOff.of(job, List.of(head)).set() * WET_MORTAR;
    return all / head.layout().opening().count();
  }

  /** What the stones over one opening weigh, with all soffit pieces, kg. */
  public static double headKg(HeadWork head) {
    double kg = head.pieces().stream().mapToDouble(x -> x.mass().kg()).sum();
    return kg + apartKg(List.of(head)) / head.layout().opening().count();
  }
}

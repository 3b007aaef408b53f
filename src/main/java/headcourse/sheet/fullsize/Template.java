package headcourse.sheet.fullsize;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.sheet.MarkRuns;
import headcourse.units.Decimals;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An outline to be traced, and the stones that it serves.
 *
 * @param outline the face, its lower left corner's box at the origin, y up, true size in mm
 * @param pieces the stones, in the order of the job
 */
record Template(Path outline, List<Piece> pieces) {
  Template {
    pieces = List.copyOf(pieces);
  }

  /** Every different outline of a job, once. */
  static List<Template> of(ShopWork work) {
    Map<String, List<Piece>> alike = new LinkedHashMap<>();
    for (HeadWork head : work.heads()) {
      for (Piece p : head.pieces()) {
        alike.computeIfAbsent(key(p), k -> new ArrayList<>()).add(p);
      }
    }
    return alike.values().stream().map(l -> new Template(home(l.get(0)), l)).toList();
  }

  double width() {
    return outline.bounds().width();
  }

  double height() {
    return outline.bounds().height();
  }

  /** The marks it serves, as one text. */
  String marks() {
    return MarkRuns.full(pieces);
  }

  private static Path home(Piece p) {
    Path path = p.stone().outline();
    Box b = path.bounds();
    return path.transformed(Similarity.move(-b.minX(), -b.minY()));
  }

  // A thousandth of a millimetre apart is alike to any saw; rounding only sorts equals together.
  private static String key(Piece p) {
    StringBuilder s = new StringBuilder();
    for (Point v : home(p).vertices(0.05)) {
      s.append(Decimals.fixed(v.x() + 0.0, 3))
          .append(' ')
          .append(Decimals.fixed(v.y() + 0.0, 3))
          .append(';');
    }
    return s.toString().replace("-0.000", "0.000");
  }
}

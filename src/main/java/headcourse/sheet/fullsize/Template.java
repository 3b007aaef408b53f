package headcourse.sheet.fullsize;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.geom.Box;
import headcourse.geom.Edge;
import headcourse.geom.HalfPlane;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.geom.Straight;
import headcourse.geom.Vec;
import headcourse.sheet.MarkRuns;
import headcourse.sheet.OwnFrame;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * An outline to be traced, and the stones that it serves.
 *
 * @param outline the face in the stone's own axes, its soffit's chord level, its lower left
 *     corner's box at the origin, y up, true size in mm; or the right half of it
 * @param pieces the stones that look so, in the order of the job
 * @param twins those that are its mirror image: it is turned over for them
 * @param half whether it is the right half alone, turned over on its centre line for the left
 * @param turn how far it lies turned from the stone's own axes, radians, counterclockwise
 */
record Template(Path outline, List<Piece> pieces, List<Piece> twins, boolean half, double turn) {
  /** A turn closer to none than this is none, radians. */
  private static final double LEVEL = 1e-6;

  /** A saw is not held closer than this, and no sum of roundings is as large, mm. */
  private static final double SAME = 0.02;

  Template {
    pieces = List.copyOf(pieces);
    twins = List.copyOf(twins);
  }

  /** Every different outline of a job, once; plain rectangles where the job asks for them. */
  static List<Template> of(ShopWork work) {
    boolean every = work.job().printing().everyOutline();
    return groups(work).stream().filter(t -> every || !t.rectangle()).toList();
  }

  /** The plain rectangles that are left out. */
  static List<Template> leftOut(ShopWork work) {
    boolean every = work.job().printing().everyOutline();
    return groups(work).stream().filter(t -> !every && t.rectangle()).toList();
  }

  private static List<Template> groups(ShopWork work) {
    List<Template> found = new ArrayList<>();
    for (HeadWork head : work.heads()) {
      for (Piece p : head.pieces()) {
        Path own = home(p.stone().outline().transformed(OwnFrame.of(p.stone())));
        Path mirrored = mirrored(own);
        int i = 0;
        while (i < found.size()
            && !same(found.get(i).outline, own)
            && !same(found.get(i).outline, mirrored)) {
          i++;
        }
        if (i == found.size()) {
          found.add(new Template(own, List.of(p), List.of(), false, 0));
        } else {
          found.set(i, found.get(i).with(p, same(found.get(i).outline, own)));
        }
      }
    }
    return found;
  }

  private Template with(Piece p, boolean alike) {
    return alike
        ? new Template(outline, and(pieces, p), twins, half, turn)
        : new Template(outline, pieces, and(twins, p), half, turn);
  }

  private static List<Piece> and(List<Piece> pieces, Piece more) {
    return Stream.concat(pieces.stream(), Stream.of(more)).toList();
  }

  double width() {
    return outline.bounds().width();
  }

  double height() {
    return outline.bounds().height();
  }

  /** How many stones it serves. */
  int count() {
    return pieces.size() + twins.size();
  }

  /** The marks it serves, as one text. */
  String marks() {
    return MarkRuns.full(Stream.concat(pieces.stream(), twins.stream()).toList());
  }

  /**
   * It, or what takes fewer sheets: its right half where both are alike, or it turned so that an
   * edge which leans lies along the paper.
   */
  Template laid(Tiling.Room portrait, Tiling.Room landscape) {
    Template best = this;
    int least = tiles(portrait, landscape);
    for (Template t : least == 1 ? List.<Template>of() : otherwise()) {
      int tiles = t.tiles(portrait, landscape);
      if (tiles < least) {
        best = t;
        least = tiles;
      }
    }
    return best;
  }

  private int tiles(Tiling.Room portrait, Tiling.Room landscape) {
    return Tiling.fewest(width(), height(), portrait, landscape).tiles();
  }

  private List<Template> otherwise() {
    List<Template> ways = new ArrayList<>();
    if (same(outline, mirrored(outline))) {
      new HalfPlane(new Point(width() / 2, 0), new Vec(1, 0))
          .clip(outline)
          .ifPresent(h -> ways.add(new Template(home(h), pieces, twins, true, 0)));
    }
    for (Edge e : outline.edges()) {
      // Quarter turns are tried by what lays it on paper.
      double off = Math.IEEEremainder(e.to().minus(e.from()).angle(), Math.PI / 2);
      if (Math.abs(off) > LEVEL) {
        Path turned = home(outline.transformed(Similarity.turn(-off)));
        ways.add(new Template(turned, pieces, twins, false, -off));
      }
    }
    return ways;
  }

  // Four straight edges as wide and as high as their box.
  private boolean rectangle() {
    List<Edge> edges = outline.edges();
    return edges.size() == 4
        && edges.stream().allMatch(e -> e instanceof Straight)
        && Math.abs(Math.abs(outline.area()) - width() * height())
            <= SAME * (width() + height()) / 2;
  }

  private static Path home(Path path) {
    Box b = path.bounds();
    return path.transformed(Similarity.move(-b.minX(), -b.minY()));
  }

  private static Path mirrored(Path path) {
    return home(path.transformed(Similarity.mirrorX()));
  }

  private static boolean same(Path a, Path b) {
    if (a.edges().size() != b.edges().size()
        || Math.abs(a.bounds().width() - b.bounds().width()) > SAME
        || Math.abs(a.bounds().height() - b.bounds().height()) > SAME) {
      return false;
    }
    // Three places settle a straight edge and an arc; an ellipse's fourth is for its slant.
    return a.edges().stream()
        .allMatch(
            e ->
                b.edges().stream()
                    .anyMatch(
                        o ->
                            along(e, o, false, 0, 0.3, 0.7, 1)
                                || along(e, o, true, 0, 0.3, 0.7, 1)));
  }

  private static boolean along(Edge a, Edge b, boolean back, double... at) {
    for (double t : at) {
      if (a.at(t).distance(b.at(back ? 1 - t : t)) > SAME) {
        return false;
      }
    }
    return true;
  }
}

package headcourse.audit;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Role;
import headcourse.geom.Edge;
import headcourse.geom.Path;
import headcourse.job.Bundle;
import headcourse.work.ShopWork;
import java.util.List;

/** Full size is full size: whole outlines edge by edge, not mirrored, and the bars beside them. */
final class FullSize implements Audit.Check {
  private static final double WITHIN = 0.01;
  private static final double[] BARS = {100, 101.6};

  @Override
  public void look(Figures figures, ShopWork work, List<String> faults) {
    if (figures.bundle() != Bundle.FULL_SIZE) {
      return;
    }
    boolean any = false;
    for (Mark.Group g : figures.groups()) {
      if (g.role() == Role.STONE) {
        any = true;
        for (HeadWork head : work.heads()) {
          head.pieces().stream()
              .filter(p -> p.mark().equals(g.id()))
              .forEach(p -> outline(Figures.lines(g).get(0), p, faults));
        }
      }
    }
    List<Path> lines = figures.groups().stream().flatMap(g -> Figures.lines(g).stream()).toList();
    for (double bar : BARS) {
      for (boolean level : new boolean[] {true, false}) {
        if (any && lines.stream().noneMatch(l -> bar(l, bar, level))) {
          faults.add("no bar of " + bar + " mm " + (level ? "across" : "up") + " the paper");
        }
      }
    }
  }

  private static boolean bar(Path line, double length, boolean level) {
    double w = line.bounds().width();
    double h = line.bounds().height();
    return Math.abs((level ? w : h) - length) < WITHIN && (level ? h : w) < WITHIN;
  }

  // Paper runs down, the wall up: what goes round against the clock there goes round with it here.
  private static void outline(Path drawn, Piece p, List<String> faults) {
    List<Edge> is = p.stone().outline().edges();
    List<Edge> on = drawn.edges();
    boolean turns = Math.signum(drawn.area()) == -Math.signum(p.stone().outline().area());
    boolean same = turns && is.size() == on.size();
    for (int i = 0; same && i < is.size(); i++) {
      same = Math.abs(is.get(i).length() - on.get(i).length()) < WITHIN;
    }
    if (!same) {
      faults.add(p.mark() + " is not drawn at its size, or mirrored");
    }
  }
}

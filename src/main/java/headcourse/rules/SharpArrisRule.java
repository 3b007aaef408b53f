package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.geom.Edge;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Angle;
import headcourse.units.LengthFormat;
import headcourse.units.Limit;
import java.util.List;
import java.util.Optional;

/** A stone that comes to a sharp corner loses it. */
final class SharpArrisRule implements PieceRule {
  /** Feet lie on the grid, so an angle asked for comes out a little off. */
  private static final double GRID_DEGREES = 0.25;

  @Override
  public RuleCard card() {
    return new RuleCard(
        "sharp-arris",
        "Corners of 60° and sharper chip at the saw and on the scaffold",
        Severity.WARNING,
        "UK bricklaying manual, 1927",
        SourceStatus.PUBLISHED,
        false);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.of(
        "sharp-arris", Kind.ANGLE, "corner of a stone's face that is too sharp, or sharper");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Angle limit = c.angle("sharp-arris", Angle.degrees(60));
    double sharpest = sharpest(piece.stone().outline().edges());
    if (sharpest >= limit.degrees() + GRID_DEGREES) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            Shape.of(head) == Shape.JACK ? "rule.sharp-arris.jack" : "rule.sharp-arris",
            LengthFormat.degrees(Angle.degrees(sharpest)),
            Figures.degrees(Limit.LEAST, limit)));
  }

  private static double sharpest(List<Edge> edges) {
    double least = 180;
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get(i);
      Edge after = edges.get((i + 1) % edges.size());
      double turn = before.tangent(1).cross(after.tangent(0));
      double along = before.tangent(1).dot(after.tangent(0));
      least = Math.min(least, 180 - Math.toDegrees(Math.atan2(turn, along)));
    }
    return least;
  }
}

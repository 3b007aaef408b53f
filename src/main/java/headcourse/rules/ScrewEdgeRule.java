package headcourse.rules;

import headcourse.bench.EdgeName;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Side;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A slot keeps away from the stone's ends. */
final class ScrewEdgeRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "screw-edge",
        "A slot keeps twice the thickness from the ends of its edge",
        Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("screw-edge", "least distance of a slot from the ends of its edge");
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    Length least = c.length("screw-edge", piece.thickness().times(2));
    Length edge =
        onLeft(piece, notch.edge()) ? piece.measures().leftEdge() : piece.measures().rightEdge();
    Length near = notch.height().min(edge.minus(notch.height()));
    return near.minus(least).mm() >= -1e-6
        ? Optional.empty()
        : Optional.of(c.text("rule.screw-edge", c.say().length(near, least), c.say().least(least)));
  }

  private static boolean onLeft(Piece piece, EdgeName edge) {
    boolean left = piece.stone().side() == Side.LEFT;
    return edge == EdgeName.LEFT || edge == (left ? EdgeName.OUTER : EdgeName.INNER);
  }
}

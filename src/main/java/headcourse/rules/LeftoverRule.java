package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Role;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** No stone looks like a leftover beside its neighbours. */
final class LeftoverRule implements PieceRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "leftover", "No stone is narrower than half of the stone beside it", Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("leftover", "narrowest stone as a fraction of its neighbour's width");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    if (piece.stone().role() == Role.KEY) {
      return Optional.empty();
    }
    double least = c.number("leftover", 0.5);
    int i = head.pieces().indexOf(piece);
    return Stream.of(i - 1, i + 1)
        .filter(k -> k >= 0 && k < head.pieces().size())
        .map(head.pieces()::get)
        .filter(p -> p.stone().role() != Role.KEY)
        .filter(p -> middle(piece) < least * middle(p) - 1e-6)
        .findFirst()
        .map(
            p ->
                c.say().length(Length.mm(middle(piece)))
                    + " wide beside "
                    + p.mark()
                    + " at "
                    + c.say().length(Length.mm(middle(p)))
                    + " reads as a leftover; share the width out");
  }

  private static double middle(Piece p) {
    return (p.stone().bottom().mm() + p.stone().top().mm()) / 2;
  }
}

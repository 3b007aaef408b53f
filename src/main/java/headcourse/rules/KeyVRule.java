package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.diag.Severity;
import headcourse.layout.VSoffit;
import headcourse.units.LengthFormat;
import java.util.Optional;

/** A corner serves for the key of a pointed head only where its V leaves enough of the return. */
final class KeyVRule implements PieceRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "key-v",
        "The V under a key is shallow enough for a corner's return to be left over it",
        Severity.WARNING);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Optional<VSoffit> v = VSoffit.of(piece.stone());
    if (v.isEmpty() || piece.leg().depth().isPositive() || piece.soffitPieces().isEmpty()) {
      return Optional.empty();
    }
    SoffitPiece flank = piece.soffitPieces().get(0);
    // To the job's grid, as on the ticket.
    LengthFormat f = new LengthFormat(c.job().units(), c.job().grid());
    return Optional.of(
        c.text(
            "rule.key-v",
            f.plainWithUnit(v.get().depth()),
            c.say().length(c.job().stone().thickness()),
            c.say().length(c.job().fastener().cover()),
            Integer.toString(piece.soffitPieces().size()),
            f.plainWithUnit(flank.length()),
            f.plainWithUnit(flank.depth())));
  }
}

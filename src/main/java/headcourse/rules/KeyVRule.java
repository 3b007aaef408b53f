package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.diag.Severity;
import headcourse.layout.VSoffit;
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
    if (v.isEmpty() || piece.returnDepth().isPositive() || piece.soffitPieces().isEmpty()) {
      return Optional.empty();
    }
    SoffitPiece flank = piece.soffitPieces().get(0);
    return Optional.of(
        c.text(
            "rule.key-v",
            c.say().length(v.get().depth()),
            c.say().length(c.job().stone().thickness()),
            c.say().length(c.job().fastener().cover()),
            Integer.toString(piece.soffitPieces().size()),
            c.say().length(flank.length()),
            c.say().length(flank.depth())));
  }
}

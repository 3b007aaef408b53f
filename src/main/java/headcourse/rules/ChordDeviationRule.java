package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.Params;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** A straight arris on a curved soffit may leave the curve only so far. */
final class ChordDeviationRule implements PieceRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "chord-deviation",
        "A straight arris on a curved soffit stays within 1/8 in (3 mm) of the curve",
        Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("chord-deviation", "farthest that a straight arris may lie off the curve");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Params params = head.layout().opening().head().params();
    Length most =
        params.length("arris-limit").orElseGet(() -> c.length("chord-deviation", 1 / 8.0, 3));
    Length off = Length.mm(piece.stone().chordDeviation());
    if (off.compareTo(most) <= 0 || params.word("arris").orElse("").equals("worked")) {
      return Optional.empty();
    }
    return Optional.of(
        c.text("rule.chord-deviation", c.say().length(off, most), c.say().length(most)));
  }
}

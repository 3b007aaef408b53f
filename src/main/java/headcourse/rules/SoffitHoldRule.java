package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.diag.Severity;
import java.util.Optional;

/** No soffit piece hangs over an opening by mortar and glue alone. */
final class SoffitHoldRule implements PieceRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "soffit-hold",
        "Every soffit piece has a screw of its own up into what carries the opening",
        Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    return piece.soffitPieces().stream()
        .filter(s -> !s.held())
        .findFirst()
        .map(s -> c.text("rule.soffit-hold", c.say().mass(s.massKg()), why(c, s)));
  }

  private static String why(RuleContext c, SoffitPiece s) {
    if (s.notches().isEmpty()) {
      return c.text(s.seated() ? "rule.soffit-hold.seated" : "rule.soffit-hold.shallow");
    }
    Anchor a = s.notches().get(0).anchor();
    return switch (a.hold()) {
      case SHORT ->
          c.text(
              "rule.soffit-hold.short",
              c.say().least(c.job().fastener().embedment()),
              AnchorWords.behind(c.words(), a.behind()),
              c.say().least(a.needed()));
      case OTHER_KIND -> c.text("rule.soffit-hold.kind", AnchorWords.behind(c.words(), a.behind()));
      case THIN ->
          c.text(
              "rule.soffit-hold.thin",
              AnchorWords.behind(c.words(), a.behind()),
              c.say().least(c.job().fastener().embedment()));
      default -> c.text("rule.soffit-hold.nothing", AnchorWords.behind(c.words(), a.behind()));
    };
  }
}

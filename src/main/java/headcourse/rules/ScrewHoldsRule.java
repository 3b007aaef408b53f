package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.Backing;
import headcourse.units.Length;
import java.util.Optional;

/** Behind every screw stands something that holds it. */
final class ScrewHoldsRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "screw-holds", "Behind every slot stands something that holds a screw", Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    Anchor a = notch.anchor();
    if (a.hold() != Anchor.Hold.NOTHING) {
      return Optional.empty();
    }
    String height = c.say().length(Length.mm(notch.at().y()));
    return Optional.of(
        a.behind().equals(Backing.UNKNOWN)
            ? c.text("rule.screw-holds.unknown", height)
            : c.text("rule.screw-holds.none", height, AnchorWords.behind(c.words(), a.behind())));
  }
}

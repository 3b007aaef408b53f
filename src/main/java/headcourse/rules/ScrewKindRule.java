package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.AnchorKind;
import java.util.Optional;

/** Anchors are made for what they are driven into. */
final class ScrewKindRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "screw-kind",
        "The anchor is made for what it holds in: wood, steel, concrete or block",
        Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    Anchor a = notch.anchor();
    if (a.hold() != Anchor.Hold.OTHER_KIND) {
      return Optional.empty();
    }
    AnchorKind first = c.job().fastener().kinds().get(0);
    return Optional.of(
        c.text(
            "rule.screw-kind",
            AnchorWords.type(c.words(), first),
            AnchorWords.behind(c.words(), a.behind()),
            c.text("anchor.ask-" + a.behind().kind().word())));
  }
}

package headcourse.rules;

import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import java.util.Optional;

/** A slot is covered in the end. */
final class NotchShowsRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "notch-shows", "A later stone or joint hides every slot", Severity.WARNING);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    return notch.hiddenBy() != null && !notch.hiddenBy().isEmpty()
        ? Optional.empty()
        : Optional.of(c.text("rule.notch-shows"));
  }
}

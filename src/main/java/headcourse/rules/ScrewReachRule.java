package headcourse.rules;

import headcourse.bench.Anchor;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.Fastener;
import headcourse.units.Length;
import java.util.Optional;

/** A screw at hand is long enough to bite in what holds it. */
final class ScrewReachRule implements NotchRule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "screw-reach",
        "A screw at hand reaches the job's embedment in what holds, square to the wall",
        Severity.ERROR);
  }

  @Override
  public Optional<String> look(RuleContext c, Piece piece, Notch notch) {
    Anchor a = notch.anchor();
    Fastener f = c.job().fastener();
    if (a.hold() == Anchor.Hold.THIN) {
      Length thick = c.job().wall().sheathing().thickness();
      return Optional.of(
          c.text(
              "rule.screw-reach.thin",
              c.say().length(thick, f.embedment()),
              c.say().least(f.embedment())));
    }
    if (a.hold() != Anchor.Hold.SHORT) {
      return Optional.empty();
    }
    boolean in = a.best().isPositive();
    Length longest = f.lengths().get(f.lengths().size() - 1);
    return Optional.of(
        c.text(
            in ? "rule.screw-reach.in" : "rule.screw-reach.short",
            c.say().length(longest),
            c.say().length(in ? a.best() : a.best().negated(), f.embedment()),
            AnchorWords.behind(c.words(), a.behind()),
            c.say().least(f.embedment()),
            c.say().least(a.needed())));
  }
}

package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/** Screws of a long stone stand near both its ends. */
final class ScrewEndsRule implements PieceRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "screw-ends",
        "A stone of 18 in and more has a screw within 12 in of each end",
        Severity.NOTE,
        "Nevada Administrative Code 452.120, full-bed stone, by analogy",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.length("screw-ends", "farthest that a long stone's end may be from a screw");
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    Length most = c.length("screw-ends", 12, 300);
    Length high = piece.stone().height();
    if (high.compareTo(c.inUnits(18, 450)) < 0 || piece.notches().isEmpty()) {
      return Optional.empty();
    }
    Length low = piece.notches().stream().map(Notch::height).reduce(Length::min).orElseThrow();
    Length top = piece.notches().stream().map(Notch::height).reduce(Length::max).orElseThrow();
    Length far = low.max(high.minus(top));
    return far.compareTo(most) <= 0
        ? Optional.empty()
        : Optional.of(
            c.text(
                "rule.screw-ends",
                c.say().length(far, most),
                c.say().length(high),
                c.say().most(most)));
  }
}

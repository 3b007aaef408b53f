package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.Kind;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.rules.Finding.SourceStatus;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What one person may lift to the head, by the lifting equation. */
final class LiftingReachRule implements PieceRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "lifting-reach",
        "A stone lifted by one person weighs no more than the lifting equation allows",
        Severity.NOTE,
        "NIOSH 94-110",
        SourceStatus.PUBLISHED,
        true);
  }

  @Override
  public List<ParamDef> limits() {
    return Stream.of(
            Rule.length("lifting-hands", "hands before the ankles, at the start of the lift"),
            Rule.length("lifting-from", "hands above the floor, at the start of the lift"),
            Rule.length("lifting-travel", "how far the hands go up"),
            Rule.of("lifting-twist", Kind.ANGLE, "how far the body turns"),
            Rule.number("lifting-frequency", "the equation's F: 1 for a lift now and then"),
            Rule.number("lifting-grip", "the equation's C: 1 for a good grip, 0.9 for a poor one"))
        .flatMap(List::stream)
        .toList();
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Piece piece) {
    NioshLift lift = lift(c, head);
    double alone = lift.limitKg();
    // Where two people lift anyway, that rule has said so.
    if (piece.mass().liftingKg() <= alone
        || piece.mass().liftingKg() >= LiftingRule.limit(c) * (1 - 1e-9)) {
      return Optional.empty();
    }
    return Optional.of(
        c.text(
            "rule.lifting-reach",
            c.say().mass(piece.mass().liftingKg()),
            c.say().mass(Limit.MOST, alone),
            c.say().length(lift.horizontal()),
            c.say().length(lift.vertical()),
            c.say().length(lift.travel())));
  }

  private static NioshLift lift(RuleContext c, HeadWork head) {
    Length from = c.length("lifting-from", 30, 760);
    Length height = head.layout().opening().height();
    // A scaffold is moved so that no lift goes above the shoulder by more than a stone's height.
    Length up = c.inUnits(40, 1000);
    Length travel = height == null ? up : height.minus(from).max(Length.ZERO).min(up);
    return new NioshLift(
        c.length("lifting-hands", 15, 380),
        from,
        c.length("lifting-travel", travel),
        c.angle("lifting-twist", Angle.degrees(0)),
        c.number("lifting-frequency", 1),
        c.number("lifting-grip", 1));
  }
}

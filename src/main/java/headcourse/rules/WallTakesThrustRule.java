package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.layout.Side;
import headcourse.rules.Finding.SourceStatus;
import headcourse.statics.Standing;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.util.Optional;

/**
 * Where a solid head would push, there is wall to push against. Walls seldom stand by themselves,
 * and half the head's weight helps, so only less than half of the pier that would is spoken of.
 */
final class WallTakesThrustRule implements SideRule {
  @Override
  public RuleCard card() {
    return new RuleCard(
        "wall-takes-thrust",
        "The wall beside is half as wide as a pier that a solid head would not push over",
        Severity.NOTE,
        "statics of a pier that stands by itself",
        SourceStatus.CALCULATED,
        false);
  }

  @Override
  public Optional<String> look(RuleContext c, HeadWork head, Side side) {
    Standing s = head.asSolid() == null ? null : head.asSolid().standing();
    if (s == null || s.pier() == null) {
      return Optional.empty();
    }
    Grid coarse = new Grid(c.inUnits(1, 10));
    Length pier = coarse.ticks(coarse.ceil(Length.mm(s.pier())));
    return Ends.wall(head, side)
        .filter(wall -> wall.times(2).compareTo(pier) < 0)
        .map(
            wall ->
                c.text(
                    "rule.wall-takes-thrust",
                    Figures.decimal(Limit.LEAST, s.thrust(), 2),
                    c.say().span(wall),
                    c.say().span(pier)));
  }
}

package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.layout.Role;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The head's top either meets a bed joint or misses it by a stone that can be set. */
final class CourseMissRule implements Rule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "course-miss",
        "The top of the ends, and of the key, meets a bed joint or misses it by more than a sliver",
        Severity.WARNING);
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : c.heads()) {
      for (Piece p : head.pieces()) {
        if (meets(head, p.stone().role())) {
          miss(c, Length.mm(p.stone().outline().bounds().maxY()))
              .ifPresent(text -> hits.add(FindingDraft.stone(head, p, text)));
        }
      }
    }
    return hits;
  }

  /** In flat heads the ends and the key, in curved ones the key alone. */
  private static boolean meets(HeadWork head, Role role) {
    return role == Role.KEY || role == Role.END && Shape.of(head) != Shape.CURVED;
  }

  private static Optional<String> miss(RuleContext c, Length top) {
    Length near = FourCornersRule.near(c);
    Length sliver = SliverRule.width(c);
    Length nearest = null;
    for (Length y : c.job().wall().courses()) {
      Length off = y.minus(top);
      nearest = nearest == null || off.abs().compareTo(nearest.abs()) < 0 ? off : nearest;
    }
    if (nearest == null
        || nearest.abs().compareTo(near) <= 0
        || nearest.abs().compareTo(sliver) >= 0) {
      return Optional.empty();
    }
    boolean above = nearest.isPositive();
    return Optional.of(
        c.text("rule.course-miss." + (above ? "above" : "below"), c.say().length(nearest.abs())));
  }
}

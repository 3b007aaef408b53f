package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.layout.Role;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
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
  public List<Hit> check(RuleContext c) {
    List<Hit> hits = new ArrayList<>();
    for (HeadWork head : c.heads()) {
      for (Piece p : head.pieces()) {
        if (p.stone().role() != Role.STONE) {
          miss(c, Length.mm(p.stone().outline().bounds().maxY()))
              .ifPresent(text -> hits.add(Hit.stone(head, p, text)));
        }
      }
    }
    return hits;
  }

  private static Optional<String> miss(RuleContext c, Length top) {
    Length near = FourCornersRule.near(c);
    Length sliver = SliverRule.width(c);
    return c.job().wall().courses().stream()
        .map(y -> y.minus(top))
        .min(Comparator.comparing(Length::abs))
        .filter(d -> d.abs().compareTo(near) > 0 && d.abs().compareTo(sliver) < 0)
        .map(
            d ->
                "its top misses the bed joint "
                    + (d.isPositive() ? "above" : "below")
                    + " by "
                    + c.say().length(d.abs(), sliver)
                    + ", a sliver: "
                    + (d.isPositive() ? "raise" : "lower")
                    + " the top by as much, or shift the courses");
  }
}

package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.diag.Severity;
import headcourse.job.ShapeDef.ParamDef;
import headcourse.layout.Role;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.List;

/** No stone looks like a leftover beside its neighbours. */
final class LeftoverRule implements Rule {
  @Override
  public RuleCard card() {
    return RuleCard.practice(
        "leftover", "No stone is narrower than half of the stone beside it", Severity.WARNING);
  }

  @Override
  public List<ParamDef> limits() {
    return Rule.number("leftover", "narrowest stone as a fraction of its neighbour's width");
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    List<FindingDraft> hits = new ArrayList<>();
    double least = c.number("leftover", 0.5);
    for (HeadWork head : c.heads()) {
      List<Piece> pieces = head.pieces();
      for (int i = 0; i < pieces.size(); i++) {
        Piece wide = pieces.get(i);
        for (int k = i - 1; k <= i + 1; k += 2) {
          if (k >= 0 && k < pieces.size() && leftover(pieces.get(k), wide, least)) {
            hits.add(FindingDraft.stone(head, pieces.get(k), text(c, pieces.get(k), wide)));
          }
        }
      }
    }
    return hits;
  }

  private static boolean leftover(Piece narrow, Piece wide, double least) {
    return narrow.stone().role() != Role.KEY
        && wide.stone().role() != Role.KEY
        && middle(narrow) < least * middle(wide) - 1e-6;
  }

  private static String text(RuleContext c, Piece narrow, Piece wide) {
    return c.text(
        "rule.leftover",
        c.say().length(Length.mm(middle(narrow))),
        wide.mark(),
        c.say().length(Length.mm(middle(wide))));
  }

  private static double middle(Piece p) {
    return (p.stone().bottom().mm() + p.stone().top().mm()) / 2;
  }
}

package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.layout.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A rule that looks at each end of a head. */
interface SideRule extends Rule {
  /** What is to be said of one side, if anything. */
  Optional<String> look(RuleContext context, HeadWork head, Side side);

  @Override
  default List<FindingDraft> check(RuleContext context) {
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : context.heads()) {
      for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
        String end = side == Side.LEFT ? "rule.end-left" : "rule.end-right";
        look(context.of(head), head, side)
            .ifPresent(
                text ->
                    hits.add(
                        Ends.of(head, side)
                            .map(piece -> FindingDraft.stone(head, piece, text))
                            .orElseGet(() -> FindingDraft.head(head, context.text(end, text)))));
      }
    }
    return hits;
  }
}

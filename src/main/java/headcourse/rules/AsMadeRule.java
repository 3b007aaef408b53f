package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.diag.Severity;
import headcourse.layout.HeadLayout.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What was made otherwise than the job asks, or chosen where it leaves something open, is said. */
public final class AsMadeRule implements Rule {
  /** The name in findings, by which sheets find them. */
  public static final String NAME = "as-made";

  /** Other remarks have sheets or rules of their own. */
  private static final Set<String> SAID =
      Set.of("rounded", "key-bottom", "key-top", "key-open", "rise", "shoulder", "as-drawn");

  @Override
  public RuleCard card() {
    return RuleCard.practice(
        NAME, "What is made otherwise than asked, or was left open, is said", Severity.NOTE);
  }

  @Override
  public List<FindingDraft> check(RuleContext c) {
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : c.heads()) {
      for (Remark r : head.layout().remarks()) {
        if (SAID.contains(r.key())) {
          List<Object> values = new ArrayList<>(r.values());
          values.add(c.say().length(c.job().grid().tick()));
          hits.add(
              FindingDraft.head(
                  head, c.of(head).text("rule.as-made-" + r.key(), values.toArray())));
        }
      }
    }
    return hits;
  }
}

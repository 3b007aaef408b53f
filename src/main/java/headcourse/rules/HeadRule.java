package headcourse.rules;

import headcourse.bench.HeadWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A rule that looks at one head at a time. */
interface HeadRule extends Rule {
  /** What is to be said of the head, if anything. */
  Optional<String> look(RuleContext context, HeadWork head);

  @Override
  default List<FindingDraft> check(RuleContext context) {
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : context.heads()) {
      Optional<String> text = look(context.of(head), head);
      if (text.isPresent()) {
        hits.add(FindingDraft.head(head, text.get()));
      }
    }
    return hits;
  }
}

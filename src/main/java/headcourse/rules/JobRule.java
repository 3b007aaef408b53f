package headcourse.rules;

import java.util.List;
import java.util.Optional;

/** A rule that looks at the job as a whole. */
interface JobRule extends Rule {
  /** What is to be said, if anything. */
  Optional<String> look(RuleContext context);

  @Override
  default List<FindingDraft> check(RuleContext context) {
    Optional<String> text = look(context);
    return text.isPresent() ? List.of(FindingDraft.job(text.get())) : List.of();
  }
}

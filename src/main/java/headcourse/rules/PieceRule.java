package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A rule that looks at one stone at a time. */
interface PieceRule extends Rule {
  /** What is to be said of the stone, if anything. */
  Optional<String> look(RuleContext context, HeadWork head, Piece piece);

  @Override
  default List<FindingDraft> check(RuleContext context) {
    List<FindingDraft> hits = new ArrayList<>();
    for (HeadWork head : context.heads()) {
      for (Piece piece : head.pieces()) {
        Optional<String> text = look(context.of(head), head, piece);
        if (text.isPresent()) {
          hits.add(FindingDraft.stone(head, piece, text.get()));
        }
      }
    }
    return hits;
  }
}

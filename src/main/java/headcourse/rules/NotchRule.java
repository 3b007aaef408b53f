package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A rule that looks at one notch at a time. */
interface NotchRule extends PieceRule {
  /** What is to be said of the notch, if anything. */
  Optional<String> look(RuleContext context, Piece piece, Notch notch);

  @Override
  default Optional<String> look(RuleContext context, HeadWork head, Piece piece) {
    List<String> said = new ArrayList<>();
    for (Notch notch : piece.notches()) {
      Optional<String> text = look(context, piece, notch);
      if (text.isPresent()) {
        String here = context.edge(notch.edge()) + ": " + text.get();
        if (!said.contains(here)) {
          said.add(here);
        }
      }
    }
    return said.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", said));
  }
}

package headcourse.rules;

import headcourse.bench.HeadWork;
import headcourse.geom.Path;
import headcourse.units.Length;
import java.util.Optional;

/** How far the soffit of a head rises. */
final class Rises {
  private Rises() {}

  /** Highest point of the soffit above its springing, without the key's drop; empty if unknown. */
  static Optional<Length> of(HeadWork head) {
    if (head.layout().curve() == null) {
      return head.layout().opening().head().params().length("rise");
    }
    Path intrados = head.layout().curve().intrados();
    return Optional.of(Length.mm(intrados.bounds().maxY() - intrados.start().y()));
  }
}

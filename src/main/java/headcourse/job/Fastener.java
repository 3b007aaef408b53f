package headcourse.job;

import headcourse.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The screw behind each notch.
 *
 * @param kinds the kinds at hand; where two would hold the first is taken
 * @param lengths the lengths at hand, shortest first
 * @param shank shank diameter
 * @param head head diameter
 * @param embedment least penetration into what holds, square to the wall
 * @param cover least stone left between the slot and the face
 */
public record Fastener(
    List<AnchorKind> kinds,
    List<Length> lengths,
    Length shank,
    Length head,
    Length embedment,
    Length cover) {
  /** Copies the lists. */
  public Fastener {
    kinds = List.copyOf(kinds);
    lengths = List.copyOf(lengths);
  }

  /** The kind at hand that is made to hold in something. */
  public Optional<AnchorKind> kind(Backing.Kind into) {
    return kinds.stream().filter(k -> k.suits(into)).findFirst();
  }
}

package headcourse.job;

import headcourse.units.Length;
import java.util.List;

/**
 * The screw behind each notch.
 *
 * @param lengths the lengths at hand, shortest first
 * @param shank shank diameter
 * @param head head diameter
 * @param embedment least penetration behind the bed, square to the wall
 * @param cover least stone left between the slot and the face
 */
public record Fastener(
    List<Length> lengths, Length shank, Length head, Length embedment, Length cover) {
  /** Copies the lengths. */
  public Fastener {
    lengths = List.copyOf(lengths);
  }
}

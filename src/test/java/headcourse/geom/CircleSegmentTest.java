package headcourse.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CircleSegmentTest {
  /** General geometry reference, recomputed: chord 21, height 6. */
  @Test
  void fromChordAndHeight() {
    CircleSegment s = CircleSegment.ofChordAndHeight(21, 6);
    relative(12.1875, s.radius());
    relative(118.97953, Math.toDegrees(s.angle()));
    relative(25.308373, s.arc());
    relative(89.254148, s.area());
    relative(21, s.chord());
    relative(6, s.height());
    relative(s.angle(), CircleSegment.ofChordAndRadius(21, 12.1875).angle());
  }

  private static void relative(double expected, double actual) {
    assertEquals(expected, actual, 1e-6 * expected);
  }

  /** The same reference: arc 1, angle 45°. */
  @Test
  void fromArcAndAngle() {
    CircleSegment s = new CircleSegment(1 / (Math.PI / 4), Math.PI / 4);
    assertEquals(1.2732395, s.radius(), 5e-8);
    assertEquals(0.97449536, s.chord(), 1e-8);
    assertEquals(0.096919589, s.height(), 1e-8);
    assertEquals(0.063460604, s.area(), 1e-8);
  }

  /** An engineering handbook's table of segments of radius 1. */
  @ParameterizedTest
  @CsvSource({
    "10, 0.00381, 0.17431, 0.00044",
    "30, 0.03407, 0.51764, 0.01180",
    "45, 0.07612, 0.76537, 0.03915",
    "60, 0.13397, 1, 0.09059",
    "90, 0.29289, 1.41421, 0.28540",
    "120, 0.50000, 1.73205, 0.61418",
    "150, 0.74118, 1.93185, 1.05900",
    "180, 1, 2, 1.57080"
  })
  void tableOfSegments(double degrees, double height, double chord, double area) {
    CircleSegment s = new CircleSegment(1, Math.toRadians(degrees));
    assertEquals(height, s.height(), 1e-5);
    assertEquals(chord, s.chord(), 1e-5);
    assertEquals(area, s.area(), 1e-5);
  }

  @Test
  void refusesWhatIsNone() {
    assertThrows(IllegalArgumentException.class, () -> new CircleSegment(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new CircleSegment(1, 7));
    assertThrows(IllegalArgumentException.class, () -> CircleSegment.ofChordAndRadius(3, 1));
  }
}

package headcourse.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lines are no wider than they may be, and no letter is lost. */
class WrapTest {
  @Test
  void breaksAtSpacesAndLineEnds() {
    double w = Face.REGULAR.width("set the key", 2.5);
    assertEquals(
        List.of("set the key", "first", "", "then go"),
        Wrap.lines("set the  key first\n\nthen go", Face.REGULAR, 2.5, w + 0.01));
    assertEquals(List.of(""), Wrap.lines("", Face.REGULAR, 2.5, 10));
    assertEquals(List.of(""), Wrap.lines("  ", Face.REGULAR, 2.5, 10));
    assertEquals(
        List.of("set the key"), Wrap.lines("  set the   key ", Face.REGULAR, 2.5, w + 0.01));
  }

  @Test
  void breaksLongWordsBetweenLettersThatStayWhole() {
    double w = Face.REGULAR.width("wall", 2.5);
    assertEquals(
        List.of("wall", "wall", "a b"), Wrap.lines("wallwall a b", Face.REGULAR, 2.5, w + 0.01));
    // Beyond the basic plane: printed as question marks, one for two chars.
    String far = new String(Character.toChars(0x1F9F1));
    double one = Face.REGULAR.width("?", 2.5);
    assertEquals(one, Face.REGULAR.width(far, 2.5), 1e-12);
    assertEquals(List.of(far, far), Wrap.lines(far + far, Face.REGULAR, 2.5, one + 0.01));
    assertEquals(List.of("a", "b"), Wrap.lines("ab", Face.REGULAR, 2.5, 0.1));
  }

  @Test
  void randomTextsKeepTheirLettersAndTheirWidth() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < 80; i++) {
        text.append(random.nextInt(5) == 0 ? ' ' : (char) ('a' + random.nextInt(26)));
      }
      double width = 8 + random.nextInt(40);
      List<String> lines = Wrap.lines(text.toString(), Face.BOLD, 3.5, width);
      assertEquals(
          text.toString().replace(" ", ""),
          String.join("", lines).replace(" ", ""),
          "seed " + seed);
      for (String line : lines) {
        assertTrue(Face.BOLD.width(line, 3.5) <= width + 1e-9, "seed " + seed);
      }
      String cut = Wrap.shortened(text.toString(), Face.BOLD, 3.5, width);
      assertTrue(Face.BOLD.width(cut, 3.5) <= width + 1e-9, "seed " + seed);
    }
  }
}

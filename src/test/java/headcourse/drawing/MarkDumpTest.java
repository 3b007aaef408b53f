package headcourse.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.testing.SamplePages;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One line for every mark. */
class MarkDumpTest {
  @Test
  void oneLineAMark() {
    String dump = MarkDump.of(SamplePages.letter(1));
    List<String> lines = dump.lines().toList();
    assertEquals("bundle bench \"Mill <barn> & \\\"doors\\\"\" en 2026-05-04", lines.get(0));
    assertEquals("page D1-1 215.9 x 279.4 \"Ticket D1-1\"", lines.get(1));
    assertTrue(lines.contains("   stroke 0.7 solid 50,60 110,60 105,150 55,150 50,60 closed"));
    assertTrue(lines.contains("   label 45,105 3.5 bold middle @90 \"11 ⅜″\""));
    assertEquals(23, lines.size());
  }

  @Test
  void coloursAndPictures() {
    List<String> lines = MarkDump.of(SamplePages.coloured().pages().get(0)).lines().toList();
    assertEquals(" colour ff0000", lines.get(1));
    assertEquals(" colour 0000ff", lines.get(3));
    assertTrue(lines.get(7).startsWith(" picture 20,60 30,70 image/png "));
  }
}

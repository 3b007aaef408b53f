package headcourse.diag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DiagnosticPrinterTest {
  private static String print(String line, int column, int length) {
    Source source = Source.of("a.yaml", line);
    return DiagnosticPrinter.print(
        Diagnostic.error(new Span(source, 1, column, length), "wrong; expected right", "do this"));
  }

  @Test
  void placeLineCaretHint() {
    assertEquals(
        "a.yaml:1:4: error: wrong; expected right\n    a: bcd\n       ^^^\n  hint: do this",
        print("a: bcd", 4, 3));
  }

  @Test
  void wideTakesTwoColumnsAndCombiningNone() {
    assertTrue(print("石e\u0301x", 4, 1).contains("\n       ^\n"));
  }

  @Test
  void tabIsOneColumnAndControlsDoNotReachTheTerminal() {
    String s = print("\ta\u001b[31m", 2, 1);
    assertTrue(s.contains("\n     ^\n"));
    assertFalse(s.contains("\u001b"));
  }

  @Test
  void longLinesAreCutAroundTheCaret() {
    String s = print("x".repeat(5000) + "HERE" + "y".repeat(5000), 5001, 4);
    String[] lines = s.split("\n");
    assertTrue(lines[1].length() < 120);
    assertEquals(lines[1].indexOf("HERE"), lines[2].indexOf("^^^^"));
  }

  @Test
  void withoutPlace() {
    assertEquals("headcourse: warning: w", DiagnosticPrinter.print(Diagnostic.warning(null, "w")));
  }
}

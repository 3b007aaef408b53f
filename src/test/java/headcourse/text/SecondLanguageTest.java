package headcourse.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Two languages on one sheet: a figure is printed once, and what is in the second is marked. */
class SecondLanguageTest {
  private static final Words BOTH = Words.of("en+es");

  @Test
  void aFigureThatBothBeginOrEndWithIsPrintedOnce() {
    assertEquals("mass / masa 5.8 kg", BOTH.say("ticket.mass", "5.8 kg"));
    assertEquals("30 mm deep / hondo", BOTH.say("ticket.depth", "30 mm"));
    assertEquals("FACE from outside / CARA desde afuera, 1:10", BOTH.say("ticket.face", "1:10"));
    assertEquals(
        "SET IN THIS ORDER / COLOCAR EN ESTE ORDEN: 1, 2, 3 …", BOTH.say("wall.set-in-order"));
    // Figures amid the words stay where they are in each language.
    assertEquals(
        "Bed 1\" over every return. / Mezcla (mortero) de 1\" sobre cada retorno.",
        BOTH.say("wall.bed-level", "1\""));
    assertEquals("Rev.", BOTH.say("frame.revision"));
  }

  /** A sentence put together of several words is not mixed of two languages. */
  @Test
  void aSentenceIsMadeInEachLanguageByItself() {
    String said = BOTH.say(w -> w.say("ticket.edge-outer") + ", " + w.say("ticket.edge-top"));
    assertEquals("outer edge, top / canto exterior, arriba", said);
    assertEquals(List.of("cut", "cortada"), BOTH.each("ticket.box-cut"));
  }

  @Test
  void theSecondLanguageIsMarkedWhereverLinesBreak() {
    String said = BOTH.withTongues().say("wall.closing");
    assertEquals(BOTH.say("wall.closing"), SecondLanguage.plain(said));
    String spanish = Words.of("es").say("wall.closing");
    for (double width : new double[] {30, 55, 90, 400}) {
      List<String> lines = Wrap.lines(said, Face.REGULAR, 3.5, width);
      StringBuilder second = new StringBuilder();
      for (String line : lines) {
        // Marks take no room.
        assertEquals(
            Face.REGULAR.width(SecondLanguage.plain(line), 3.5),
            Face.REGULAR.width(line, 3.5),
            1e-9);
        for (SecondLanguage.Run run : SecondLanguage.runs(line)) {
          assertTrue(!run.text().isEmpty());
          second.append(run.second() ? run.text() + " " : "");
        }
      }
      assertEquals(spanish.replace(" ", ""), second.toString().replace(" ", ""), width + " mm");
    }
  }

  @Test
  void oneLanguageHasNoMarks() {
    String said = Words.of("es").withTongues().say("wall.closing");
    assertEquals(List.of(new SecondLanguage.Run(said, false)), SecondLanguage.runs(said));
    assertEquals("", Words.of("es").secondTag());
    assertEquals("es", BOTH.secondTag());
  }
}

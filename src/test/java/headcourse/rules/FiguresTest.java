package headcourse.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import headcourse.testing.JobMaker;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.Limit;
import headcourse.units.Units;
import org.junit.jupiter.api.Test;

class FiguresTest {
  private static Figures inches() {
    return Figures.of(JobMaker.one().make(), Words.of("en"));
  }

  private static Figures metric() {
    JobMaker m = JobMaker.one();
    m.units = Units.MILLIMETRE;
    m.tick = Length.mm(1);
    return Figures.of(m.make(), Words.of("en"));
  }

  @Test
  void inInches() {
    Figures f = inches();
    assertEquals("7 15/16\"", f.length(Length.inches(7.9375)));
    assertEquals("9\"", f.span(Length.inches(9)));
    assertEquals("1'-0\"", f.span(Length.inches(12)));
    assertEquals("2'-4 1/2\"", f.span(Length.inches(28.5)));
    assertEquals("50 lb", f.mass(22.6796185));
    assertEquals("15.1 lb/ft²", f.massPerArea(73.7227));
    assertEquals("720 in²", f.area(Limit.MOST, 0.4645152));
  }

  @Test
  void inMillimetres() {
    Figures f = metric();
    assertEquals("190 mm", f.length(Length.mm(190)));
    assertEquals("190.5 mm", f.length(Length.mm(190.4)));
    assertEquals("4877 mm", f.span(Length.mm(4877)));
    assertEquals("20.1 kg", f.mass(20.06));
    assertEquals("73.2 kg/m²", f.massPerArea(73.2364));
    assertEquals("0.465 m²", f.area(Limit.LEAST, 0.4645152));
  }

  @Test
  void aHairOffTheLimitIsSaid() {
    Figures f = inches();
    Length limit = Length.inches(4);
    assertEquals("just under 4\"", f.length(new Length(limit.picometres() - 1), limit));
    assertEquals("just over 4\"", f.length(new Length(limit.picometres() + 1), limit));
    assertEquals("4\"", f.length(limit, limit));
    assertEquals("4 1/16\"", f.length(Length.inches(4.0625), limit));
  }

  @Test
  void limitsAreRoundedToTheSafeSide() {
    Figures f = inches();
    assertEquals("15 lb/ft²", f.massPerArea(Limit.MOST, 73.6));
    assertEquals("just over 15 lb/ft²", f.massPerAreaOver(73.25, 15 * 0.45359237 / 0.09290304));
    assertEquals("360 in²", f.area(Limit.MOST, 360.9 * 0.00064516));
    assertEquals("49.9 lb", f.mass(Limit.MOST, 49.98 * 0.45359237));
    assertEquals("0.3 in", f.thin(Limit.MOST, Length.inches(0.3)));
    assertEquals("3 31/32\"", f.most(Length.inches(3.99)));
    assertEquals("4 1/32\"", f.least(Length.inches(4.001)));
    assertEquals("3 7/8\"", f.length(Length.inches(3.9), Length.inches(4)));
    assertEquals("4 1/8\"", f.length(Length.inches(4.1), Length.inches(4)));
    assertEquals("12'-0\"", f.spanMost(Length.inches(144.01)));
    assertEquals("28 %", Figures.percent(Limit.LEAST, 0.271));
  }

  @Test
  void numbersAreRoundedOnceAndNeverMinusZero() {
    assertEquals("0", Figures.decimal(-0.04, 1));
    assertEquals("1000", Figures.decimal(1000, 2));
    assertEquals("0.13", Figures.decimal(0.125, 2));
    assertEquals("27 %", Figures.percent(0.271));
  }
}

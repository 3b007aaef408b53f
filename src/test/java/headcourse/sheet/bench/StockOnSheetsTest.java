package headcourse.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.export.CutListCsv;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec.Soffit;
import headcourse.job.Stock;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.stock.StockPlan;
import headcourse.testing.JobMaker;
import headcourse.testing.PageInspector;
import headcourse.testing.Tape;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Tickets, cutting plan and cut list name the same blanks, with the same figures. */
class StockOnSheetsTest {
  private static Stock.Item item(
      String mark, Stock.Kind kind, double length, double face, double leg, int count) {
    return new Stock.Item(
        "stock." + mark,
        mark,
        kind,
        Length.inches(length),
        Length.inches(face),
        Length.inches(leg),
        Length.inches(1.25),
        count,
        false,
        0);
  }

  /** Two identical windows whose stones are each made of two flats, of unlike blanks. */
  private static ShopWork mitred() {
    JobMaker m = JobMaker.one();
    JobMaker.OpeningMaker o = m.first();
    o.width = Length.inches(36);
    o.count = 2;
    o.soffit = Soffit.MITRED;
    m.stock =
        new Stock(
            List.of(
                item("F1", Stock.Kind.FLAT, 30, 16, 0, 20),
                item("F2", Stock.Kind.FLAT, 24, 6, 0, 20)),
            0);
    var outcome = WorkUp.of(m.make());
    return outcome.value().orElseThrow(() -> new AssertionError(outcome.diagnostics().toString()));
  }

  private static ShopWork corners() {
    JobMaker m = JobMaker.one();
    m.stock = new Stock(List.of(item("C1", Stock.Kind.CORNER, 30, 16, 5, 20)), 0);
    return WorkUp.of(m.make()).value().orElseThrow();
  }

  private static void collect(List<Mark> marks, List<String> labels) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group g) {
        collect(g.marks(), labels);
      } else if (mark instanceof Mark.Label l) {
        labels.add(Tape.raised(l.text()));
      }
    }
  }

  private static String text(Page page) {
    List<String> labels = new ArrayList<>();
    collect(page.marks(), labels);
    return " " + String.join(" ", labels) + " ";
  }

  @Test
  void everyCutOfThePlanStandsOnItsTicket() {
    for (ShopWork work : List.of(mitred(), corners())) {
      PageSet set = SheetBook.compose(work, Bundle.BENCH, Frame.plain());
      StringBuilder all = new StringBuilder();
      set.pages().forEach(p -> all.append(text(p)));
      LengthFormat f = new LengthFormat(work.job().units(), work.job().grid());
      int cuts = 0;
      for (Ticket t : Ticket.of(work)) {
        Map<String, List<String>> places = new TreeMap<>();
        for (StockPlan.CutBlank b : work.stock().blanks()) {
          for (StockPlan.Cut c : b.cuts()) {
            if (t.pieces().stream().anyMatch(p -> p.mark().equals(c.stone()))) {
              cuts++;
              places.computeIfAbsent(f.withUnit(foot(work, c)), k -> new ArrayList<>()).add(b.id());
            }
          }
        }
        assertEquals(
            places.values().stream().mapToInt(List::size).sum(),
            t.blanks().size(),
            t.piece().mark());
        // Two flats a stone where they are mitred.
        int flats = t.head().layout().opening().head().soffit() == Soffit.MITRED ? 2 : 1;
        assertEquals(t.count(work) * flats, t.blanks().size(), t.piece().mark());
        for (String at : places.keySet()) {
          assertTrue(all.indexOf(" " + at) > 0, t.piece().mark() + " at " + at);
        }
      }
      int planned = work.stock().blanks().stream().mapToInt(b -> b.cuts().size()).sum();
      assertEquals(planned, cuts);
      String csv = CutListCsv.write(work);
      for (StockPlan.CutBlank b : work.stock().blanks()) {
        for (StockPlan.Cut c : b.cuts()) {
          String row =
              csv.lines().filter(l -> l.startsWith(c.stone() + ",")).findFirst().orElseThrow();
          assertTrue((row + " ").replace(',', ' ').contains(" " + b.id() + " "), row);
        }
      }
      for (Page page : set.pages()) {
        assertEquals(List.of(), PageInspector.faults(page));
      }
    }
  }

  /** Where its left side stands on the blank's lower edge; turned, that is its right side's top. */
  private static Length foot(ShopWork work, StockPlan.Cut cut) {
    List<Point> outline =
        work.heads().get(0).piece(cut.stone().substring(3)).stone().outline().vertices(0.01);
    if (cut.part() == StockPlan.Part.SOFFIT) {
      return cut.at();
    }
    double least = outline.stream().mapToDouble(Point::x).min().orElseThrow();
    double most = outline.stream().mapToDouble(Point::x).max().orElseThrow();
    double low = outline.stream().mapToDouble(Point::y).min().orElseThrow();
    double high = outline.stream().mapToDouble(Point::y).max().orElseThrow();
    double in =
        cut.turned()
            ? most
                - outline.stream()
                    .filter(v -> v.y() > high - 1e-6)
                    .mapToDouble(Point::x)
                    .max()
                    .orElseThrow()
            : outline.stream()
                    .filter(v -> v.y() < low + 1e-6)
                    .mapToDouble(Point::x)
                    .min()
                    .orElseThrow()
                - least;
    return cut.at().plus(Length.mm(in));
  }

  /** The off-cut is what a rule laid on the blank shows: one kerf past the last stone. */
  @Test
  void theOffCutIsWhatIsLeftWhole() {
    ShopWork work = corners();
    LengthFormat f = new LengthFormat(work.job().units(), work.job().grid());
    Length kerf = work.job().tools().saw().kerf();
    String plan =
        text(
            SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages().stream()
                .filter(p -> p.label().equals("plan"))
                .findFirst()
                .orElseThrow());
    int told = 0;
    for (StockPlan.CutBlank b : work.stock().blanks()) {
      Length end = Length.ZERO;
      for (StockPlan.Cut c : b.cuts()) {
        double width =
            work.heads().get(0).piece(c.stone().substring(3)).stone().outline().bounds().width();
        Length to = c.at().plus(Length.mm(width));
        end = end.compareTo(to) > 0 ? end : to;
      }
      Length left = b.length().minus(end).minus(kerf).plus(Length.mm(1e-6));
      Length whole = f.grid().ticks(f.grid().floor(left));
      if (whole.compareTo(Length.inches(4)) > 0) {
        told++;
        // Its number is left out where there is no room for it.
        boolean room = whole.compareTo(Length.inches(8)) > 0;
        String number = room ? b.id() + "/1: " : "";
        String label = " off-cut " + number + f.tape(whole) + " ";
        assertTrue(plan.contains(label), b.id() + ": " + plan);
      }
    }
    assertTrue(told > 0, "a case of no use");
  }
}

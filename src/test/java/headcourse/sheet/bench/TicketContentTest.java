package headcourse.sheet.bench;

import static headcourse.testing.StockItems.flat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.ExposedEdge;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Stock;
import headcourse.sheet.MarkRuns;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.stock.StockPlan;
import headcourse.testing.JobMaker;
import headcourse.testing.RandomJobs;
import headcourse.testing.Tape;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whatever the bench worked out for a stone stands on its ticket: nothing is left out for room. */
class TicketContentTest {
  @Test
  void everyPassNotchAndOpenEdgeIsPrinted() {
    int drawn = 0;
    for (long seed = 301; seed <= 330; seed++) {
      JobMaker m = RandomJobs.flat(seed);
      m.paper = List.of("letter", "a4", "tabloid", "arch-d").get((int) (seed % 4));
      Optional<ShopWork> work = WorkUp.of(m.make()).value();
      if (work.isEmpty()) {
        continue;
      }
      drawn++;
      check(work.get(), "seed " + seed);
    }
    assertTrue(drawn > 10, "too few jobs could be set out: " + drawn);
  }

  /** Copies for identical openings and both flats of each stone come from somewhere. */
  @Test
  void everyBlankOfAStoneIsNamed() {
    JobMaker m = JobMaker.one();
    m.first().soffit = HeadSpec.Soffit.MITRED;
    m.first().count = 2;
    m.stock = new Stock(List.of(flat("F1", 36, 14, 30)), 0.1);
    ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
    assertTrue(work.stock().unfit().isEmpty());
    int named = 0;
    for (Ticket t : Ticket.of(work)) {
      named += t.blanks().size();
      for (StockPlan.CutBlank b : work.stock().blanks()) {
        for (StockPlan.Cut cut : b.cuts()) {
          if (t.pieces().stream().anyMatch(p -> p.mark().equals(cut.stone()))) {
            assertTrue(t.blanks().contains(new Ticket.Origin(b.id(), cut.at(), cut.part())));
          }
        }
      }
    }
    assertEquals(work.stock().blanks().stream().mapToInt(b -> b.cuts().size()).sum(), named);
  }

  private static void check(ShopWork work, String which) {
    List<String> labels = new ArrayList<>();
    for (Page page : SheetBook.compose(work, Bundle.BENCH, Frame.plain()).pages()) {
      collect(page.marks(), labels);
    }
    String all = " " + String.join(" ", labels) + " ";
    LengthFormat f = new LengthFormat(work.job().units(), work.job().grid());
    List<Ticket> tickets = Ticket.of(work);
    int passes = tickets.stream().mapToInt(t -> t.piece().saw().size()).sum();
    long printed =
        labels.stream()
            .filter(l -> l.matches("[0-9]+ (top|soffit|left|right|outer|key|centre)( edge)?"))
            .count();
    assertEquals(passes, printed, which + ": saw passes");
    for (Ticket t : tickets) {
      Piece p = t.piece();
      String say = which + ", " + p.mark() + ": ";
      for (Notch n : p.notches()) {
        assertTrue(all.contains(f.tape(n.height())), say + "notch at " + f.tape(n.height()));
        assertTrue(all.contains(" " + f.tape(n.mouth()) + " "), say + "mouth");
        assertTrue(all.contains(" " + f.tape(n.run()) + " "), say + "run");
      }
      for (ExposedEdge e : p.exposed()) {
        assertTrue(all.contains(f.withUnit(e.length())), say + "open edge " + e);
      }
      assertTrue(all.contains(f.tape(p.measures().rising())), say + "diagonal");
      assertTrue(all.contains(f.tape(p.measures().leftEdge())), say + "left edge");
      if (t.pieces().size() > 1) {
        assertTrue(all.contains(MarkRuns.of(t.pieces())), say + "alike");
      }
    }
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
}

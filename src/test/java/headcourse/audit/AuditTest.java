package headcourse.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Moved;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.geom.Similarity;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Language;
import headcourse.sheet.SheetCases;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.RandomArches;
import headcourse.testing.RandomJobs;
import headcourse.testing.Seeds;
import headcourse.units.Angle;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Nothing is found on pages as they are made; what is moved or lettered wrongly on them is. */
class AuditTest {
  private static PageSet pages(ShopWork work, Bundle bundle) {
    return SheetBook.compose(work, bundle, Frame.plain());
  }

  private static ShopWork work(long seed) {
    for (long s = seed; ; s++) {
      Optional<ShopWork> work = WorkUp.of(RandomJobs.flat(s, 36, 90).make()).value();
      if (work.isPresent() && work.get().heads().get(0).pieces().size() > 6) {
        return work.get();
      }
    }
  }

  @Test
  void pagesAsMadeHold() {
    int found = 0;
    for (long seed = 0; seed < Seeds.of(16); seed++) {
      for (Optional<ShopWork> work :
          List.of(
              WorkUp.of(RandomJobs.flat(seed).make()).value(), WorkUp.of(spanish(seed)).value())) {
        if (work.isPresent()) {
          found++;
          for (Bundle b : Bundle.values()) {
            assertEquals(List.of(), Audit.faults(work.get(), pages(work.get(), b)), "seed " + seed);
          }
        }
      }
    }
    assertTrue(found > 10, "only " + found);
  }

  /**
   * Stones of a cambered jack arch stand each on its own sloping arris, so their tops are not
   * level, and they lie closer on a blank than such whose tops are.
   */
  @Test
  void camberedStonesLieOnTheirBlankAsTheyAreCut() {
    int several = 0;
    for (long seed : new long[] {229, 1, 2, 3, 4, 5, 6, 7, 8}) {
      var maker = RandomJobs.flat(seed);
      if (seed != 229) {
        maker = RandomJobs.flat(seed, 40, 80);
        maker.first().shape = "jack";
        maker.first().params.remove("ease");
        maker.first().params.put("camber", Angle.ofRate(1 / 4.0, 12));
        maker.stock = RandomJobs.flat(229).make().stock();
      }
      Optional<ShopWork> work = WorkUp.of(maker.make()).value();
      if (work.isPresent()) {
        several +=
            work.get().stock().blanks().stream().mapToInt(b -> b.cuts().size() > 1 ? 1 : 0).sum();
        PageSet bench = pages(work.get(), Bundle.BENCH);
        assertEquals(List.of(), Audit.faults(work.get(), bench), "seed " + seed);
      }
    }
    assertTrue(several > 5, "only " + several);
  }

  private static Job spanish(long seed) {
    var maker = RandomArches.job(seed);
    maker.paper = "a1";
    maker.language = Language.EN_ES;
    return maker.make();
  }

  private static PageSet with(PageSet set, UnaryOperator<Mark> change) {
    List<Page> pages = new ArrayList<>();
    for (Page p : set.pages()) {
      pages.add(
          new Page(
              p.width(),
              p.height(),
              p.label(),
              p.title(),
              p.marks().stream().map(m -> deep(m, change)).toList(),
              p.bookmarks()));
    }
    return new PageSet(
        set.bundle(), set.title(), set.author(), set.language(), set.second(), set.date(), pages);
  }

  private static Mark deep(Mark mark, UnaryOperator<Mark> change) {
    Mark m = change.apply(mark);
    return m instanceof Mark.Group g
        ? new Mark.Group(
            g.role(), g.id(), g.title(), g.marks().stream().map(i -> deep(i, change)).toList())
        : m;
  }

  private static void found(Bundle bundle, String what, UnaryOperator<Mark> change) {
    ShopWork work = work(40);
    List<String> faults = Audit.faults(work, with(pages(work, bundle), change));
    assertFalse(faults.isEmpty(), what);
    assertTrue(faults.get(0).startsWith(bundle.word() + ", sheet "), faults.get(0));
  }

  @Test
  void aStoneThatIsMovedIsFound() {
    found(
        Bundle.WALL,
        "a stone 1 mm aside",
        m -> m instanceof Mark.Group g && g.id().endsWith("-R2") ? Moved.by(1, 0, m) : m);
  }

  @Test
  void runningMarksThatChangePlacesAreFound() {
    ShopWork work = work(40);
    PageSet set = pages(work, Bundle.WALL);
    List<Mark.Label> turned = new ArrayList<>();
    with(
        set,
        m -> {
          if (m instanceof Mark.Label l && l.degrees() == 90) {
            turned.add(l);
          }
          return m;
        });
    Mark.Label a = turned.get(0);
    Mark.Label b = turned.get(1);
    UnaryOperator<Mark> swap =
        m ->
            m == a || m == b
                ? new Mark.Label(
                    ((Mark.Label) m).at(),
                    m == a ? b.text() : a.text(),
                    a.lettering(),
                    ((Mark.Label) m).align(),
                    90)
                : m;
    assertFalse(Audit.faults(work, with(set, swap)).isEmpty(), a.text() + " and " + b.text());
  }

  @Test
  void anOutlineThatIsShrunkIsFound() {
    ShopWork work = SheetCases.TINY_STONES.work("letter", Language.EN);
    UnaryOperator<Mark> shrink =
        m ->
            m instanceof Mark.Group g && g.role() == Role.STONE
                ? new Mark.Group(
                    g.role(), g.id(), g.title(), g.marks().stream().map(AuditTest::shrunk).toList())
                : m;
    assertFalse(Audit.faults(work, with(pages(work, Bundle.FULL_SIZE), shrink)).isEmpty());
  }

  private static Mark shrunk(Mark m) {
    return m instanceof Mark.Stroke s
        ? new Mark.Stroke(s.path().transformed(new Similarity(0.99, 0, false, 0, 0)), s.pen())
        : m;
  }

  @Test
  void aSizeThatIsNotTheDrawnOneIsFound() {
    ShopWork work = work(40);
    String wrong = work.job().units() == Units.INCH ? "99\"" : "999";
    List<String> faults =
        Audit.faults(
            work,
            with(
                pages(work, Bundle.BENCH),
                m ->
                    m instanceof Mark.Label l && l.degrees() > 80 && l.degrees() < 100
                        ? new Mark.Label(l.at(), wrong, l.lettering(), l.align(), l.degrees())
                        : m));
    assertFalse(faults.isEmpty());
  }

  @Test
  void aProgramThatFaultsSaysWhere() {
    ShopWork work = work(40);
    PageSet set =
        with(
            pages(work, Bundle.WALL),
            m -> m instanceof Mark.Group g && g.id().endsWith("-R1") ? Moved.by(0, 2, m) : m);
    PrintFault fault = assertThrows(PrintFault.class, () -> PrintFault.unless(work, set));
    assertTrue(fault.getMessage().contains("-R1"), fault.getMessage());
  }
}

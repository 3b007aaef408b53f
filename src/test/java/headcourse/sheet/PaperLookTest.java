package headcourse.sheet;

import static headcourse.sheet.FiguresAddUpTest.labels;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.job.Bundle;
import headcourse.job.Language;
import headcourse.job.Setting;
import headcourse.layout.Drift;
import headcourse.layout.JointLine;
import headcourse.layout.PlacedStone;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.Table.Column;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.sheet.frame.FrameReader;
import headcourse.testing.JobMaker;
import headcourse.testing.Tape;
import headcourse.text.SecondLanguage;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Faults that were seen on paper: cut words, lonely rows, figures that do not say whose they are.
 */
class PaperLookTest {
  private static final Lettering TEXT = new Lettering(3.5, false);

  private static List<Mark.Label> all(ShopWork work, Bundle bundle, SheetFrame frame) {
    List<Mark> marks = new ArrayList<>();
    SheetBook.compose(work, bundle, frame).pages().forEach(p -> marks.addAll(p.marks()));
    return labels(marks);
  }

  private static String joined(List<Mark.Label> labels) {
    return SecondLanguage.plain(String.join(" ", labels.stream().map(Mark.Label::text).toList()));
  }

  private static SheetContext context() {
    ShopWork work = SheetCases.DOOR_8.work("letter", Language.EN);
    LengthFormat format = new LengthFormat(work.job().units(), work.job().grid());
    return new SheetContext(work, Bundle.WALL, Words.of("en"), format, Frame.plain());
  }

  private static List<PageDraft> flow(Consumer<SheetFlow> content) {
    return SheetFlow.pages(context(), Turn.PORTRAIT, "X", "A flow", "", content);
  }

  private static long rows(PageDraft page) {
    return rows(page.board().marks());
  }

  private static long rows(List<Mark> marks) {
    long n = 0;
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        n += (g.role() == Mark.Role.ROW ? 1 : 0) + rows(g.marks());
      }
    }
    return n;
  }

  @Test
  void theFramesNoteIsWholeInBothLanguages() throws IOException {
    ShopWork work = SheetCases.DOOR_8.work("letter", Language.EN_ES);
    String said = joined(all(work, Bundle.WALL, Frame.plain()));
    assertTrue(said.contains("Seen from outside, facing the wall."), said);
    assertTrue(said.contains("Visto desde afuera, de frente al muro."), said);
    Path file = Path.of("templates", "notes.svg");
    Frame notes = FrameReader.read("notes.svg", Files.readAllBytes(file)).value().orElseThrow();
    for (String paper : List.of("a3", "arch-d")) {
      String own = joined(all(SheetCases.DOOR_8.work(paper, Language.EN_ES), Bundle.WALL, notes));
      assertTrue(own.contains(Words.of("en").say("frame.caution-text")), paper);
      assertTrue(own.contains(Words.of("es").say("frame.caution-text")), paper);
    }
  }

  @Test
  void noPageHasTheLastRowAlone() {
    List<Column> columns = List.of(new Column("one", 50, Mark.Align.START, false));
    int overfull = 0;
    for (int n = 20; n < 60; n++) {
      List<List<String>> rows = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        rows.add(List.of("row " + i));
      }
      List<PageDraft> pages = flow(f -> f.table(columns, rows, TEXT));
      overfull += pages.size() - 1;
      // Its heading is a row too.
      assertTrue(rows(pages.get(pages.size() - 1)) > 2, n + " rows");
    }
    assertTrue(overfull > 5, "never a second page");
  }

  @Test
  void aFlowClosesUpWhereThatSavesAPage() {
    String text =
        "a word or two of a paragraph that has a line and some more of another ".repeat(3);
    int saved = 0;
    for (int n = 5; n < 20; n++) {
      int paragraphs = n;
      Consumer<SheetFlow> content =
          f -> {
            for (int i = 0; i < paragraphs; i++) {
              f.paragraph(text, TEXT);
            }
          };
      SheetFlow loose = new SheetFlow(context(), Turn.PORTRAIT, "X", "A flow", "");
      content.accept(loose);
      int close = flow(content).size();
      assertTrue(close <= loose.pages().size());
      saved += loose.pages().size() - close;
    }
    assertTrue(saved > 0, "no page saved");
  }

  @Test
  void headingsStandWithTheFirstRow() {
    List<Column> columns = List.of(new Column("one", 50, Mark.Align.START, false));
    String tall = "much to say ".repeat(90);
    for (int n = 5; n < 40; n++) {
      int lines = n;
      List<PageDraft> pages =
          flow(
              f -> {
                for (int i = 0; i < lines; i++) {
                  f.paragraph("a line", TEXT);
                }
                f.table("The heading", columns, List.of(List.of(tall)), TEXT);
              });
      for (PageDraft page : pages) {
        List<String> texts = labels(page.board().marks()).stream().map(Mark.Label::text).toList();
        assertEquals(texts.contains("The heading"), rows(page) > 0, n + " lines");
      }
    }
  }

  /** The next stone is named, so that left is not taken for right. */
  @ParameterizedTest
  @EnumSource(names = {"CART_DOOR_16", "MIXED", "MORTAR_METRIC"})
  void theStoneThatTakesUpTheDriftIsNamed(SheetCases which) {
    ShopWork work = which.work("letter", Language.EN);
    HeadWork head = work.heads().get(0);
    LengthFormat f = new LengthFormat(work.job().units(), work.job().grid());
    List<String> texts =
        all(work, Bundle.WALL, Frame.plain()).stream().map(Mark.Label::text).toList();
    int checks = 0;
    for (JointLine j : head.layout().joints()) {
      if (j.inner().isEmpty() || j.outer().isEmpty() || j.index() % 3 != 0) {
        continue;
      }
      PlacedStone next = head.layout().stone(j.outer());
      Length out = Drift.at(work.job(), head.layout(), j.side(), j.index()).outward();
      Length taken = f.grid().ticks(f.grid().ceil(out));
      String cut = ": " + f.withUnit(next.bottom().minus(taken));
      assertTrue(
          texts.stream()
              .map(Tape::raised)
              .anyMatch(t -> t.endsWith(cut) && t.contains(next.mark())),
          next.mark() + cut);
      checks++;
    }
    assertTrue(checks > 1);
  }

  @ParameterizedTest
  @EnumSource(SheetCases.class)
  void everyStoneOfAnElevationHasItsMarkAndNoEndIsOnNothing(SheetCases which) {
    for (Language language : List.of(Language.EN, Language.EN_ES)) {
      ShopWork work = which.work("letter", language);
      List<Piece> pieces = work.heads().get(0).pieces();
      List<String> texts =
          all(work, Bundle.CONTRACTOR, Frame.plain()).stream().map(Mark.Label::text).toList();
      for (Piece p : pieces.size() > 40 ? List.<Piece>of() : pieces) {
        assertTrue(texts.contains(p.stone().mark()), p.mark());
      }
      String wall = joined(all(work, Bundle.WALL, Frame.plain())) + " ";
      assertFalse(wall.contains("on the wall 0\" ") || wall.contains("on the wall 0 mm "), wall);
    }
  }

  @Test
  void slotsOfAnEdgeShareALine() {
    JobMaker m = JobMaker.one();
    m.joints = Setting.Joints.MORTAR;
    m.joint = Length.inches(0.25);
    m.first().headHeight = Length.inches(24);
    ShopWork work = WorkUp.of(m.make()).value().orElseThrow();
    LengthFormat f = new LengthFormat(work.job().units(), work.job().grid());
    String said = joined(all(work, Bundle.WALL, Frame.plain()));
    int shared = 0;
    for (Piece p : work.heads().get(0).pieces()) {
      for (Notch a : p.notches()) {
        for (Notch b : p.notches()) {
          if (a.edge() == b.edge()
              && a.height().compareTo(b.height()) < 0
              && a.reachable()
              && b.reachable()
              && a.screw() != null
              && a.screw().equals(b.screw())) {
            shared++;
            String heights = f.tape(a.height()) + " · " + f.tape(b.height());
            assertTrue(said.contains(heights), p.mark() + ": " + heights);
          }
        }
      }
    }
    assertTrue(shared > 4, "a case of no use");
  }

  /** Where there is no key, no ticket speaks of one. */
  @Test
  void keylessTicketsNameTheCentreLine() {
    for (Bundle bundle : List.of(Bundle.BENCH, Bundle.FULL_SIZE)) {
      ShopWork work = SheetCases.NO_KEY.work("letter", Language.EN_ES);
      String said = joined(all(work, bundle, Frame.plain())).toLowerCase(Locale.ROOT);
      for (String word : List.of("key side", "key edge", "of the key", "la clave", "canto clave")) {
        assertFalse(said.contains(word), bundle + ": " + word);
      }
      boolean told = said.contains("centre side") && said.contains("lado del eje");
      assertTrue(told || bundle == Bundle.FULL_SIZE, "no ticket names the centre");
    }
  }

  /** Every bundle by itself warns of what hurts, and says whose word governs, in its languages. */
  @ParameterizedTest
  @EnumSource(Bundle.class)
  void cautionsStandOnEveryBundle(Bundle bundle) {
    ShopWork work = SheetCases.DOOR_8.work("letter", Language.EN_ES);
    String said = joined(all(work, bundle, Frame.plain())).toLowerCase(Locale.ROOT);
    List<String> words =
        new ArrayList<>(List.of("dust|silica", "eye", "guard", "veneer carries no", "local code"));
    words.addAll(List.of("polvo|sílice", "ojos|lentes", "guarda", "no carga", "códigos locales"));
    if (bundle != Bundle.FULL_SIZE && bundle != Bundle.ORDER) {
      words.addAll(List.of("silica", "sílice", "50 lb"));
    }
    for (String word : words) {
      assertTrue(
          List.of(word.split("\\|")).stream().anyMatch(said::contains), bundle + ": " + word);
    }
  }
}

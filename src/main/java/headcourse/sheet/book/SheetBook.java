package headcourse.sheet.book;

import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.sheet.Binder;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.SheetIndex;
import headcourse.sheet.SheetPacker;
import headcourse.sheet.SheetRun;
import headcourse.sheet.bench.CuttingPlanSheet;
import headcourse.sheet.bench.IndexSheet;
import headcourse.sheet.bench.LayoutBoardSheet;
import headcourse.sheet.bench.SkewbackSheet;
import headcourse.sheet.bench.TicketSheets;
import headcourse.sheet.contractor.ContractorElevations;
import headcourse.sheet.contractor.FrontSheet;
import headcourse.sheet.contractor.NotesSheet;
import headcourse.sheet.contractor.QuestionsSheet;
import headcourse.sheet.contractor.ScheduleSheet;
import headcourse.sheet.contractor.SectionSheet;
import headcourse.sheet.fullsize.CoverSheet;
import headcourse.sheet.fullsize.OutlineSheets;
import headcourse.sheet.fullsize.RibSheets;
import headcourse.sheet.fullsize.StripSheets;
import headcourse.sheet.order.OrderSheet;
import headcourse.sheet.solid.SolidSheet;
import headcourse.sheet.wall.SettingSheet;
import headcourse.sheet.wall.StrikingSheet;
import headcourse.sheet.wall.WallElevation;
import headcourse.text.Words;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import java.util.List;
import java.util.ServiceLoader;
import java.util.ServiceLoader.Provider;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Every kind of sheet, in the order in which a bundle has them. A new one is a line here; or, in a
 * jar of one's own on the class path, a line in its {@code META-INF/services}: it comes last.
 */
public final class SheetBook {
  /** After two the codes stand as a rule; a set that never settles is printed all the same. */
  private static final int PASSES = 4;

  private SheetBook() {}

  /** How many papers are tried beyond the job's own. */
  private static final int LARGER = 12;

  private static final List<SheetComposer> OWN =
      List.of(
          new IndexSheet(),
          new CuttingPlanSheet(),
          new SkewbackSheet(),
          new TicketSheets(),
          new LayoutBoardSheet(),
          new WallElevation(),
          new StrikingSheet(),
          new SettingSheet(),
          new FrontSheet(),
          new ScheduleSheet(),
          new ContractorElevations(),
          new SolidSheet(),
          new SectionSheet(),
          new QuestionsSheet(),
          new NotesSheet(),
          new CoverSheet(),
          new OutlineSheets(),
          new RibSheets(),
          new StripSheets(),
          new OrderSheet());

  private static final List<SheetComposer> SHEETS =
      Stream.concat(
              OWN.stream(), ServiceLoader.load(SheetComposer.class).stream().map(Provider::get))
          .toList();

  /** A bundle of a job. */
  public static PageSet compose(ShopWork work, Bundle bundle, SheetFrame frame) {
    return compose(work, bundle, frame, said -> {});
  }

  /**
   * A bundle of a job; on the next larger paper where there is no room on the job's own.
   *
   * @param said is told so
   */
  public static PageSet compose(
      ShopWork work, Bundle bundle, SheetFrame frame, Consumer<String> said) {
    Paper own = work.job().papers().of(bundle);
    Paper paper = own;
    for (int tries = 0; ; tries++) {
      try {
        return on(work, bundle, frame, paper);
      } catch (NoRoom e) {
        if (tries > LARGER) {
          throw e;
        }
        if (paper == own) {
          said.accept(bundle.word() + ".pdf: no room on " + own.name() + " for " + e.getMessage());
        }
        paper = PaperSizes.larger(paper);
      }
    }
  }

  private static PageSet on(ShopWork job, Bundle bundle, SheetFrame frame, Paper paper) {
    ShopWork work = paper.equals(job.job().papers().of(bundle)) ? job : job.on(bundle, paper);
    SheetContext context =
        new SheetContext(
            work,
            bundle,
            Words.of(work.job().language().word()).withTongues().ofArch(work.archesOnly()),
            new LengthFormat(work.job().units(), work.job().grid()),
            frame);
    return Binder.bind(
        context, bundle == Bundle.CONTRACTOR ? contractor(context) : drafts(context));
  }

  private static List<PageDraft> drafts(SheetContext context) {
    return SheetRun.of(
        context, SHEETS.stream().filter(s -> s.bundle() == context.bundle()).toList());
  }

  // A contractor hangs few large sheets side by side, and is sent from one to another: composed
  // again until the codes that are printed are those that the sheets have.
  private static List<PageDraft> contractor(SheetContext context) {
    SheetIndex index = SheetIndex.EMPTY;
    for (int pass = 0; ; pass++) {
      List<PageDraft> sheets = SheetIndex.coded(SheetPacker.of(drafts(context.with(index))));
      SheetIndex found = SheetIndex.of(sheets);
      if (found.equals(index) || pass == PASSES) {
        return sheets;
      }
      index = found;
    }
  }
}

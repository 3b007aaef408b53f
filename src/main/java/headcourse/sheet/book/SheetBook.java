package headcourse.sheet.book;

import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.sheet.Binder;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.SheetPacker;
import headcourse.sheet.bench.CuttingPlanSheet;
import headcourse.sheet.bench.IndexSheet;
import headcourse.sheet.bench.LayoutBoardSheet;
import headcourse.sheet.bench.SkewbackSheet;
import headcourse.sheet.bench.TicketSheets;
import headcourse.sheet.contractor.ContractorElevations;
import headcourse.sheet.contractor.NotesSheet;
import headcourse.sheet.contractor.ScheduleSheet;
import headcourse.sheet.contractor.SectionSheet;
import headcourse.sheet.fullsize.CoverSheet;
import headcourse.sheet.fullsize.OutlineSheets;
import headcourse.sheet.fullsize.RibSheets;
import headcourse.sheet.fullsize.StripSheets;
import headcourse.sheet.wall.SettingSheet;
import headcourse.sheet.wall.StrikingSheet;
import headcourse.sheet.wall.WallElevation;
import headcourse.text.Words;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import java.util.ServiceLoader.Provider;
import java.util.stream.Stream;

/**
 * Every kind of sheet, in the order in which a bundle has them. A new one is a line here; or, in a
 * jar of one's own on the class path, a line in its {@code META-INF/services}: it comes last.
 */
public final class SheetBook {
  private SheetBook() {}

  private static final List<SheetComposer> OWN =
      List.of(
          new IndexSheet(),
          new CuttingPlanSheet(),
          new TicketSheets(),
          new SkewbackSheet(),
          new LayoutBoardSheet(),
          new WallElevation(),
          new StrikingSheet(),
          new SettingSheet(),
          new ScheduleSheet(),
          new ContractorElevations(),
          new SectionSheet(),
          new NotesSheet(),
          new CoverSheet(),
          new OutlineSheets(),
          new RibSheets(),
          new StripSheets());

  private static final List<SheetComposer> SHEETS =
      Stream.concat(
              OWN.stream(), ServiceLoader.load(SheetComposer.class).stream().map(Provider::get))
          .toList();

  /** A bundle of a job. */
  public static PageSet compose(ShopWork work, Bundle bundle, SheetFrame frame) {
    SheetContext context =
        new SheetContext(
            work,
            bundle,
            Words.of(work.job().language().word()).withTongues().ofArch(work.archesOnly()),
            new LengthFormat(work.job().units(), work.job().grid()),
            frame);
    List<PageDraft> drafts = new ArrayList<>();
    for (SheetComposer sheet : SHEETS) {
      if (sheet.bundle() == bundle) {
        drafts.addAll(sheet.compose(context));
      }
    }
    // A contractor hangs few large sheets side by side; bench and wall want one thing a page.
    return Binder.bind(context, bundle == Bundle.CONTRACTOR ? SheetPacker.of(drafts) : drafts);
  }
}

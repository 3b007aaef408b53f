package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.geom.Similarity;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.sheet.NoRoom;
import headcourse.sheet.PageDraft;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.elevation.DimensionedFigure;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.sheet.elevation.ScaleBar;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every opening's head to scale with its dimensions, as many on a page as there is room for. */
public final class ContractorElevations implements SheetComposer {
  private static final Lettering SMALL = Lettering.NOTE;
  private static final double BAR = 9;

  /** No elevation is drawn taller, mm. */
  private static final double TALLEST = 260;

  /** What the words over an elevation take, about, mm. */
  private static final double WORDS = 50;

  /** From this width on paper has room for two elevations side by side, mm. */
  private static final double PAIR = 500;

  /** How much smaller they may then be drawn: a step of the metric scales, two of the imperial. */
  private static final double SMALLER = 2.5;

  /** The elevations of a contractor's set. */
  public ContractorElevations() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    String title = context.say("contractor.elevations");
    int columns = inPairs(context, title) ? 2 : 1;
    SheetFlow flow = flow(context, title, columns);
    flow.page().bookmark(1, title, "elevations", flow.page().area().minY());
    List<Cuts.Cut> cuts = Cuts.of(context);
    for (HeadWork head : context.work().heads()) {
      // Four on a sheet: two beside two.
      one(flow, context.of(head), head, flow.tallest() / columns, cuts);
    }
    return flow.pages();
  }

  private static SheetFlow flow(SheetContext context, String title, int columns) {
    return new SheetFlow(context, Turn.LANDSCAPE, "E1", title, "", columns);
  }

  /** Whether four on a sheet draw no elevation much smaller. */
  private static boolean inPairs(SheetContext context, String title) {
    if (context.work().heads().size() < 2 || context.area(Turn.LANDSCAPE).width() < PAIR) {
      return false;
    }
    SheetFlow whole = flow(context, title, 1);
    SheetFlow half = flow(context, title, 2);
    for (HeadWork head : context.work().heads()) {
      HeadFigures figures = new HeadFigures(head, context.format());
      Optional<DimensionedFigure> wide = fitting(context, figures, whole.width(), TALLEST);
      Optional<DimensionedFigure> narrow =
          fitting(context, figures, half.width(), half.tallest() / 2 - WORDS);
      if (narrow.isEmpty()
          || wide.isEmpty()
          || narrow.get().scale().reduction() > SMALLER * wide.get().scale().reduction()) {
        return false;
      }
    }
    return true;
  }

  private static void one(
      SheetFlow flow, SheetContext context, HeadWork head, double height, List<Cuts.Cut> all) {
    HeadFigures figures = new HeadFigures(head, context.format());
    Opening opening = head.layout().opening();
    List<String> notes = notes(context, figures);
    ChangeTriangles changes = new ChangeTriangles(context, head, flow.width());
    CutMarks cuts = new CutMarks(context, head, all);
    double bands = changes.depth() + cuts.depth();
    String note = String.join(" · ", notes);
    double said = TextFlow.height(note, flow.width(), SMALL) + 1;
    double words = 15 + bands + said + BAR;
    DimensionedFigure figure = figure(context, figures, flow.width(), height - words);
    String name = context.say("contractor.elevation-title", opening.mark(), opening.label());
    flow.heading(name, words - 8 + figure.height());
    flow.page().bookmark(2, name, "elevation-" + opening.mark(), flow.page().area().minY());
    flow.paragraph(context.say("contractor.scale", figure.scale().name()), SMALL);
    if (figure.widthsLeftOut()) {
      flow.say("contractor.chain-left-out", SMALL);
    }
    if (changes.leftOut()) {
      flow.say("contractor.c-left-out", SMALL);
    }
    double band = bands;
    flow.figure(
        band + figure.height(),
        (b, x, y) ->
            b.group(
                Role.FIGURE,
                "",
                name,
                f -> {
                  figure.draw(f, x, y + band);
                  Similarity view = figure.view(x, y + band);
                  cuts.draw(f, x, y + changes.depth(), flow.width(), view);
                  changes.draw(f, x, y, flow.width(), view);
                }));
    flow.figure(
        BAR,
        (b, x, y) ->
            ScaleBar.draw(
                b, context.words(), context.job().units(), figure.scale(), x, y + 2, flow.width()));
    flow.paragraph(note, SMALL);
  }

  private static DimensionedFigure figure(
      SheetContext context, HeadFigures figures, double width, double height) {
    return fitting(context, figures, width, height)
        .orElseThrow(() -> new NoRoom("the elevation of " + figures.layout().opening().mark()));
  }

  /**
   * The largest that is no taller, its widths left out only where it is too tall with them at any
   * scale; failing that, the smallest that is no wider. None that leaves a stone without its mark:
   * rather one that is taller than it is read with ease, where there is the room.
   */
  private static Optional<DimensionedFigure> fitting(
      SheetContext context, HeadFigures figures, double width, double height) {
    Optional<DimensionedFigure> last = Optional.empty();
    boolean unmarked = false;
    for (boolean sized : new boolean[] {true, false}) {
      for (Scale s : Scale.ladder(context.job().units())) {
        var f = DimensionedFigure.of(figures, s, context.words(), width, sized);
        if (f.isPresent() && !f.get().marked()) {
          unmarked = true;
          break; // at a smaller scale there is less room still
        }
        last = f.isPresent() ? f : last;
        if (f.isPresent() && f.get().height() <= Math.min(height, TALLEST)) {
          return f;
        }
      }
    }
    return unmarked ? last.filter(f -> f.height() <= height) : last;
  }

  private static List<String> notes(SheetContext context, HeadFigures figures) {
    LengthFormat f = context.format();
    HeadLayout layout = figures.layout();
    Opening o = layout.opening();
    List<String> line = new ArrayList<>();
    HeadSpec.Key key = o.head().key();
    if (key != null) {
      layout.stones().stream()
          .filter(s -> s.role() == headcourse.layout.Role.KEY)
          .map(PlacedStone::mark)
          .map(layout::stone)
          .forEach(
              k ->
                  line.add(
                      "K: "
                          + context.say(
                              "contractor.key-size", f.withUnit(k.bottom()), f.withUnit(k.top()))
                          + "; "
                          + context.say(
                              "contractor.key-stands",
                              f.withUnit(key.rise()),
                              f.withUnit(key.drop()),
                              f.withUnit(k.proud()))));
    }
    if (o.height() != null) {
      line.add(context.say("contractor.opening-height", f.building(o.height())));
    }
    List<String> notes = new ArrayList<>();
    if (!line.isEmpty()) {
      notes.add(String.join(" · ", line));
    }
    if (figures.curved()) {
      notes.add(arch(context, layout));
    } else if (context.job().setting().dry()) {
      notes.add(context.say("contractor.chain-note"));
    } else {
      String joint = f.withUnit(context.job().setting().joint());
      notes.add(context.say("contractor.chain-note-mortar", joint));
    }
    return notes;
  }

  private static String arch(SheetContext context, HeadLayout layout) {
    LengthFormat f = context.format();
    Length rise = Length.mm(layout.curve().intrados().bounds().maxY());
    int n = layout.stones().size();
    return layout.curve().radius() == null
        ? context.say("contractor.arch-note-many", n, f.withUnit(rise))
        : context.say(
            "contractor.arch-note",
            n,
            f.withUnit(Length.mm(layout.curve().radius())),
            f.withUnit(rise));
  }
}

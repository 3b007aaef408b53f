package headcourse.sheet.section;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.TextFlow;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.elevation.ScaleBar;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * A section on a sheet, at the largest scale that leaves room for the names beside it.
 *
 * @param name what stands above it
 * @param trueWidth its true width, mm
 * @param trueHeight its true height, mm
 * @param margins paper beyond the true size that dimensions take, below and above, mm
 * @param tallest height on paper that it is not to exceed, mm
 * @param place where it lies
 * @param drawing what draws it there
 */
public record SectionFigure(
    String name,
    double trueWidth,
    double trueHeight,
    double margins,
    double tallest,
    Placing place,
    BiConsumer<Board, SectionPlace> drawing) {
  private static final Lettering SMALL = Lettering.NOTE;
  private static final Lettering NAME = new Lettering(5, true);

  /** Least width of the column of names, mm. */
  private static final double NAMES = 44;

  private static final double LEFT = 24;

  /** Height of paper that the scale bar takes, mm. */
  private static final double BAR = 5;

  /** What stands over a section at most, mm. */
  private static final double WORDS = 29;

  /** Air under the bar and under the section, mm. */
  private static final double AIR = 3;

  /** As much as stands over a section, in its place in the set. */
  private static final String CUT_ON = "Z.88";

  /** Where a section lies. */
  public interface Placing {
    /** With its upper left corner at a place and so much width for all. */
    SectionPlace place(Scale scale, double x, double y, double width);
  }

  /** A cut at a screw. */
  public static SectionFigure of(String name, ScrewSection s, double tallest) {
    return new SectionFigure(name, s.trueWidth(), s.trueHeight(), 12, tallest, s::place, s::draw);
  }

  /** Draws it with its name and scale. */
  public void put(SheetFlow flow, SheetContext context) {
    put(flow, context, "", "");
  }

  /** The scale that it has in a flow: the largest at which it and its names have room. */
  public Scale scale(SheetFlow flow, SheetContext context) {
    double high = Math.min(flow.tallest() - WORDS, tallest) - margins;
    Scale first = scale(flow, context, high);
    // Beside a smaller drawing its names have a wider column.
    Scale s = first;
    for (Scale before = null; !s.equals(before); ) {
      if (fits(s, flow, context)) {
        return s;
      }
      before = s;
      s = scale(flow, context, trueHeight * s.factor() * 0.99);
    }
    return first;
  }

  private Scale scale(SheetFlow flow, SheetContext context, double high) {
    double wide = flow.width() - NAMES - LEFT;
    return Scale.largest(context.job().units(), trueWidth, trueHeight, wide, high);
  }

  /** Whether a column of a flow is high enough for it and its names. */
  public boolean fits(SheetFlow flow, SheetContext context) {
    return fits(scale(flow, context), flow, context);
  }

  private boolean fits(Scale scale, SheetFlow flow, SheetContext context) {
    double height = place.place(scale, 0, 0, flow.width()).bottom();
    return height + words(flow, context) <= flow.tallest();
  }

  // What stands over it takes, and air, mm.
  private double words(SheetFlow flow, SheetContext context) {
    String line = line("1 1/2\" = 1'-0\"", context.say("contractor.cut-on", CUT_ON));
    return TextFlow.height("A · " + title(), flow.width(), NAME)
        + TextFlow.height(line, flow.width(), SMALL)
        + BAR
        + AIR;
  }

  private String title() {
    int colon = name.indexOf(": ");
    return colon < 0 ? name : name.substring(0, colon);
  }

  // What it is of, behind the colon, is often long.
  private String line(String scale, String where) {
    List<String> said = new ArrayList<>();
    int colon = name.indexOf(": ");
    if (colon >= 0) {
      said.add(name.substring(colon + 2));
    }
    said.add(scale);
    if (!where.isEmpty()) {
      said.add(where);
    }
    return String.join(" · ", said);
  }

  /**
   * Draws it with its letter, name and scale.
   *
   * @param letter what it is called where it is cut, or empty
   * @param where on which sheet that is, or empty
   */
  public void put(SheetFlow flow, SheetContext context, String letter, String where) {
    Scale scale = scale(flow, context);
    double height = place.place(scale, 0, 0, flow.width()).bottom();
    var units = context.job().units();
    String line = line(scale.name(), where);
    double words = TextFlow.height(line, flow.width(), SMALL);
    flow.heading(letter.isEmpty() ? title() : letter + " · " + title(), height + words + BAR + 3);
    flow.paragraph(line, SMALL);
    flow.figure(BAR, (b, x, y) -> ScaleBar.brief(b, context.words(), units, scale, x, y));
    flow.figure(
        height + 2,
        (b, x, y) ->
            b.group(
                Role.FIGURE,
                "",
                name,
                f -> drawing.accept(f, place.place(scale, x, y, flow.width()))));
  }
}

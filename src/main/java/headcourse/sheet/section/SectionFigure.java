package headcourse.sheet.section;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
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
  private static final Lettering TEXT = new Lettering(3.5, false);

  /** Least width of the column of names, mm. */
  private static final double NAMES = 62;

  private static final double LEFT = 24;

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
    double words = 24;
    Scale scale =
        Scale.largest(
            context.job().units(),
            trueWidth,
            trueHeight,
            flow.width() - NAMES - LEFT,
            Math.min(flow.tallest() - words, tallest) - margins);
    double height = place.place(scale, 0, 0, flow.width()).bottom();
    flow.heading(name, height + 9);
    flow.paragraph(scale.name(), TEXT);
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

package headcourse.sheet.choose;

import headcourse.choose.Choice;
import headcourse.drawing.Board;
import headcourse.geom.Box;
import headcourse.sheet.Scale;
import headcourse.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Pictures of choices side by side, all to one scale: the largest at which they need one page, or
 * else no more than one more than the fewest.
 */
final class ChoiceGrid {
  private static final int MOST_COLUMNS = 4;
  private static final double GUTTER = 6;
  private static final double AIR = 5;

  private final Scale scale;
  private final int columns;
  private final double width;
  private final List<List<List<ChoiceCell>>> pages;

  private ChoiceGrid(Scale scale, int columns, double width, List<List<List<ChoiceCell>>> pages) {
    this.scale = scale;
    this.columns = columns;
    this.width = width;
    this.pages = pages;
  }

  /**
   * The best on some room.
   *
   * @param width what a page has, mm
   * @param page height of a page, mm
   * @param last height of the last page, mm
   */
  static ChoiceGrid of(
      List<Choice> choices, ChoiceText text, Units units, double width, double page, double last) {
    List<ChoiceGrid> all = new ArrayList<>();
    for (Scale scale : Scale.ladder(units)) {
      for (int columns = 1; columns <= MOST_COLUMNS; columns++) {
        at(choices, text, scale, columns, width, page, last).ifPresent(all::add);
      }
    }
    int fewest = all.stream().mapToInt(ChoiceGrid::count).min().orElse(1);
    // Where one page won't do, one more is worth larger pictures.
    int most = fewest == 1 ? 1 : fewest + 1;
    ChoiceGrid best = all.stream().filter(g -> g.count() <= most).findFirst().orElse(null);
    if (best == null) {
      // Wider than the paper at every scale: the smallest, whatever room there is beside it.
      List<Scale> ladder = Scale.ladder(units);
      double need = widest(choices, ladder.get(ladder.size() - 1)) + ChoiceCell.LETTER;
      return at(choices, text, ladder.get(ladder.size() - 1), 1, need, page, last).orElseThrow();
    }
    return best;
  }

  private static double widest(List<Choice> choices, Scale scale) {
    double most = 0;
    for (Choice c : choices) {
      most = Math.max(most, ChoicePicture.around(c.head()).width() * scale.factor());
    }
    return most;
  }

  private static Optional<ChoiceGrid> at(
      List<Choice> choices,
      ChoiceText text,
      Scale scale,
      int columns,
      double width,
      double page,
      double last) {
    double cell = (width - (columns - 1) * GUTTER) / columns;
    if (widest(choices, scale) > cell - ChoiceCell.LETTER + 1e-9) {
      return Optional.empty();
    }
    List<List<List<ChoiceCell>>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    double left = page;
    for (int i = 0; i < choices.size(); i += columns) {
      List<ChoiceCell> row = new ArrayList<>();
      for (Choice c : choices.subList(i, Math.min(choices.size(), i + columns))) {
        row.add(new ChoiceCell(c, text, scale, cell));
      }
      double height = height(row) + AIR;
      if (height > left + 1e-9) {
        left = page;
        pages.add(new ArrayList<>());
        if (height > left) {
          return Optional.empty();
        }
      }
      left -= height;
      pages.get(pages.size() - 1).add(row);
    }
    ChoiceGrid grid = new ChoiceGrid(scale, columns, cell, pages);
    List<List<ChoiceCell>> end = pages.get(pages.size() - 1);
    if (grid.height(pages.size() - 1) > last + 1e-9 && end.size() > 1) {
      List<ChoiceCell> row = end.remove(end.size() - 1);
      pages.add(new ArrayList<>(List.of(row)));
    }
    return grid.height(pages.size() - 1) > last + 1e-9 ? Optional.empty() : Optional.of(grid);
  }

  private static double height(List<ChoiceCell> row) {
    return row.stream().mapToDouble(ChoiceCell::height).max().orElse(0);
  }

  Scale scale() {
    return scale;
  }

  /** How many pages it takes. */
  int count() {
    return pages.size();
  }

  /** How wide it is, mm. */
  double width() {
    return columns * width + (columns - 1) * GUTTER;
  }

  /** Height of a page's pictures, mm. */
  double height(int page) {
    return pages.get(page).stream().mapToDouble(row -> height(row) + AIR).sum();
  }

  /** Draws a page's pictures from the upper left corner of an area on. */
  void draw(Board board, int page, Box area, double top, UnaryOperator<String> title) {
    double y = top;
    for (List<ChoiceCell> row : pages.get(page)) {
      for (int i = 0; i < row.size(); i++) {
        ChoiceCell c = row.get(i);
        c.draw(board, area.minX() + i * (width + GUTTER), y, title.apply(c.choice().letter()));
      }
      y += height(row) + AIR;
    }
  }
}

package headcourse.sheet.section;

import headcourse.drawing.Board;
import headcourse.geom.Similarity;

/**
 * Where on paper a section lies with the column of names beside it.
 *
 * @param view from model space to paper
 * @param elbow x up to which leaders run level
 * @param names the names
 * @param top upper end
 * @param bottom lower end
 */
public record SectionPlace(
    Similarity view, double elbow, Callouts names, double top, double bottom) {
  /** Between a section's leaders and the names, mm. */
  public static final double LEAD = 10;

  /** Draws the names. */
  public void drawNames(Board board) {
    names.draw(board, elbow, elbow + LEAD, top, bottom);
  }
}

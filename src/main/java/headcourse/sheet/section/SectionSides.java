package headcourse.sheet.section;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Label;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.List;

/** Says which side of a section is outside and which inside. */
public final class SectionSides {
  private static final Lettering SMALL = new Lettering(2.5, true);

  private SectionSides() {}

  /**
   * Beside an upright section, turned, where nothing stands: from its top down, then farther away.
   *
   * @param top upper end of the room, beside the section
   * @param bottom its lower end
   * @param way −1 to the left, 1 to the right
   */
  public static void upright(Board b, String text, Point top, double bottom, int way) {
    List<Label> places = new ArrayList<>();
    for (double away : new double[] {0, 2, 4, 8, 12}) {
      for (double down = 0.15; down < 0.9; down += 0.07) {
        double y = top.y() + (bottom - top.y()) * down;
        places.add(new Label(new Point(top.x() + way * away, y), text, SMALL, Align.MIDDLE, 90));
      }
    }
    b.firstFree(places, 0.5);
  }

  /** Level, in the middle of a place. */
  public static void level(Board b, String text, Point at) {
    b.text(at.x(), at.y(), text, SMALL, Align.MIDDLE);
  }
}

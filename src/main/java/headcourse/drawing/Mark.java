package headcourse.drawing;

import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.List;

/** One thing on paper. Paper space: millimetres, origin at the upper left corner, y down. */
public sealed interface Mark {
  /** A line along a path. */
  record Stroke(Path path, Pen pen) implements Mark {}

  /** A filled area; its line, if any, is a {@link Stroke} of its own. */
  record Fill(Path path, Shade shade) implements Mark {}

  /**
   * One line of text.
   *
   * @param at the anchor, on the base line
   * @param text what it says
   * @param lettering how it is written
   * @param align which part of the text lies at the anchor
   * @param degrees turned counter-clockwise as seen on paper; 90 reads from the right
   */
  record Label(Point at, String text, Lettering lettering, Align align, double degrees)
      implements Mark {
    /** Writes fractions as {@link Lettering#written} has them. */
    public Label {
      text = lettering.written(text);
    }
  }

  /** Marks that belong together: a class and perhaps an id for SVG, a layer for PDF. */
  record Group(Role role, String id, String title, List<Mark> marks) implements Mark {
    /** Copies the marks. */
    public Group {
      marks = List.copyOf(marks);
    }
  }

  /**
   * A picture from the user's frame: PNG or JPEG.
   *
   * @param box where it lies
   * @param type {@code image/png} or {@code image/jpeg}
   * @param data the file's bytes
   */
  record Picture(Box box, String type, byte[] data) implements Mark {
    /** Copies the bytes. */
    public Picture {
      data = data.clone();
    }

    @Override
    public byte[] data() {
      return data.clone();
    }
  }

  /** A place to click that leads to another page of the same bundle, by its anchor. */
  record Link(Box box, String target) implements Mark {}

  /** A coloured line or area or text; only a user's own frame makes these. */
  record Coloured(Mark mark, int rgb) implements Mark {}

  /** Which part of a text lies at its anchor. */
  enum Align {
    /** Its start. */
    START,
    /** Its middle. */
    MIDDLE,
    /** Its end. */
    END
  }

  /** What a group is; its lower-case name is the SVG class. */
  enum Role {
    /** The sheet's frame and title block. */
    FRAME,
    /** A stone's outline; the id is its mark. */
    STONE,
    /** Opening, jambs, wall. */
    WALL,
    /** Centre lines and the like. */
    LINES,
    /** Dimensions and running marks. */
    DIMENSIONS,
    /** Screws and notches. */
    SCREWS,
    /** Words. */
    NOTES,
    /** A table, or ruled boxes. */
    TABLE,
    /** A row of a table. */
    ROW,
    /** A cell that heads its column. */
    HEAD_CELL,
    /** Any other cell of a row; an empty one is there too. */
    CELL,
    /** A drawing as a whole; its title is the alternate text. */
    FIGURE,
    /** A page's title. */
    TITLE,
    /** A heading under a page's title; its own title is the text. */
    HEADING
  }
}

package headcourse.sheet.frame;

import headcourse.diag.Outcome;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.sheet.SheetFrame;
import headcourse.text.Face;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A sheet's frame: border, title block with named fields, room for the drawing. One file serves
 * every page size: its page is a reference, what lies in its left half keeps its distance from the
 * left edge of any page, what lies in its right half from the right edge, and so up and down.
 */
public final class Frame implements SheetFrame {
  /** The least room for a drawing that is worth a sheet, mm. */
  private static final double LEAST_ROOM = 80;

  /** Fields that hold words of the program and not of the job. */
  private static final Set<String> OURS = ours();

  private final double width;
  private final double height;
  private final double binding;
  private final List<Item> items;
  private final Box area;
  private final Box border;

  /**
   * A frame.
   *
   * @param binding how much of the left margin is for filing, and left out on paper that is not of
   *     an ISO size, mm
   * @param border where the border stands, or null where none is marked
   */
  Frame(double width, double height, double binding, List<Item> items, Box area, Box border) {
    this.width = width;
    this.height = height;
    this.binding = binding;
    this.items = List.copyOf(items);
    this.area = area;
    this.border = border;
  }

  private static Set<String> ours() {
    Set<String> ours = new HashSet<>(List.of("sheet", "bundle", "notes", "caution"));
    for (String field : FieldNames.ALL) {
      ours.add("caption-" + field);
    }
    return ours;
  }

  /** The plain frame that the program carries. */
  public static Frame plain() {
    return Plain.FRAME;
  }

  /** Read once, when first asked for. */
  private static final class Plain {
    static final Frame FRAME = load();

    private static Frame load() {
      String name = "/headcourse/templates/plain.svg";
      try (InputStream in = Frame.class.getResourceAsStream(name)) {
        if (in == null) {
          throw new IllegalStateException("frame missing from the program: " + name);
        }
        Outcome<Frame> frame = FrameReader.read("plain.svg", in.readAllBytes());
        return frame.value().orElseThrow(() -> new IllegalStateException("bad frame: " + name));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private Stretch stretch(double pageWidth, double pageHeight) {
    double left = Sizes.iso(pageWidth, pageHeight) ? 0 : -binding;
    return new Stretch(width, height, pageWidth, pageHeight, left);
  }

  /** Whether a page of that size leaves room for a drawing within this frame. Sizes in mm. */
  public boolean fits(double pageWidth, double pageHeight) {
    Box room = stretch(pageWidth, pageHeight).apply(area);
    return room != null && room.width() >= LEAST_ROOM && room.height() >= LEAST_ROOM;
  }

  /**
   * The room for the drawing on a page of that size, mm.
   *
   * @throws IllegalArgumentException if the page is too small for the frame
   */
  @Override
  public Box area(double pageWidth, double pageHeight) {
    Box room = stretch(pageWidth, pageHeight).apply(area);
    if (room == null) {
      throw new IllegalArgumentException(
          "a page of " + pageWidth + " x " + pageHeight + " mm is too small for the frame");
    }
    return room;
  }

  /**
   * The frame on a page.
   *
   * @param pageWidth mm
   * @param pageHeight mm
   * @param fields what to print, by the field's name without {@code field-}; captions by {@code
   *     caption-} and the name. A field that is not given stays empty; a caption keeps the words of
   *     the file
   * @return one group
   */
  @Override
  public List<Mark> place(double pageWidth, double pageHeight, Map<String, String> fields) {
    Stretch stretch = stretch(pageWidth, pageHeight);
    List<Mark> marks = new ArrayList<>();
    Set<String> covered = covered(fields);
    Floors floors = new Floors();
    for (Item item : items) {
      if (item instanceof Item.Line l) {
        floors.add(placed(l.path(), l.anchor(), stretch));
      }
    }
    for (Item item : items) {
      if (item instanceof Item.Line l) {
        marks.add(
            coloured(new Mark.Stroke(placed(l.path(), l.anchor(), stretch), l.pen()), l.rgb()));
      } else if (item instanceof Item.Area a) {
        Path path = placed(a.path(), a.anchor(), stretch);
        Shade shade = a.rgb() == 0xFFFFFF ? Shade.WHITE : Shade.BLACK;
        Mark fill = new Mark.Fill(path, shade);
        marks.add(a.rgb() == 0xFFFFFF ? fill : coloured(fill, a.rgb()));
      } else if (item instanceof Item.Image i) {
        Point c = i.box().centre();
        Point to = stretch.apply(c);
        Box b = i.box();
        Box box =
            Box.of(b.minX() + to.x() - c.x(), b.minY() + to.y() - c.y(), b.width(), b.height());
        marks.add(new Mark.Picture(box, i.type(), i.data()));
      } else if (item instanceof Item.Text t && !covered.contains(t.field())) {
        text(t, stretch, floors, fields, marks);
      }
    }
    if (border != null) {
      Box b = stretch.apply(border);
      if (b != null) {
        marks.addAll(CentringMarks.of(pageWidth, pageHeight, b));
      }
    }
    return List.of(new Mark.Group(Mark.Role.FRAME, "", "", marks));
  }

  // Captions that give way to as many lines of their fields as there is room for.
  private Set<String> covered(Map<String, String> fields) {
    Set<String> covered = new HashSet<>();
    for (Item item : items) {
      if (item instanceof Item.Text t && t.field() != null && !Double.isNaN(t.last())) {
        String text = fields.getOrDefault(t.field(), "").strip();
        if (fitting(t, text, t.lines()).lines().size() > 2) {
          covered.add("caption-" + t.field());
        }
      }
    }
    return covered;
  }

  private static Fitting fitting(Item.Text t, String text, int most) {
    return Double.isNaN(t.last())
        ? Fitting.of(text, t.lettering(), t.width(), most)
        : Fitting.growing(text, t.lettering(), t.width(), most);
  }

  private static Path placed(Path path, Point anchor, Stretch stretch) {
    if (anchor == null) {
      return stretch.apply(path);
    }
    double dx = stretch.shiftX(anchor.x());
    return path.transformed(Similarity.move(dx, stretch.shiftY(anchor.y())));
  }

  private static Mark coloured(Mark mark, int rgb) {
    return rgb == 0 ? mark : new Mark.Coloured(mark, rgb);
  }

  private static void text(
      Item.Text t, Stretch stretch, Floors floors, Map<String, String> fields, List<Mark> marks) {
    String text = t.text();
    if (t.field() != null) {
      text = fields.getOrDefault(t.field(), t.field().startsWith("caption-") ? t.text() : "");
    }
    if (text.isBlank()) {
      return;
    }
    int both = text.indexOf(" / ");
    Point at = stretch.apply(t.anchor());
    int most = t.lines();
    if (most > 1 && Double.isNaN(t.last()) && t.degrees() == 0) {
      // A small page leaves less room below than the frame's own.
      most = Math.min(most, floors.lines(at, t.width(), Fitting.pitch(t.lettering().height())));
    }
    if (both > 0 && OURS.contains(t.field() == null ? "" : t.field())) {
      // Our own words in two languages: the first alone where there is no room for both.
      Face face = Face.of(t.lettering().bold());
      boolean fits =
          t.lines() == 1
              ? face.width(text, t.lettering().height()) <= t.width()
              : !fitting(t, text.strip(), most).cut();
      text = fits ? text : text.substring(0, both);
    }
    Fitting fit =
        t.field() == null
            ? new Fitting(t.lettering(), List.of(text))
            : fitting(t, text.strip(), most);
    int n = fit.lines().size();
    boolean upwards = n > 1 && !Double.isNaN(t.last());
    double pitch = upwards ? fit.closePitch() : fit.pitch();
    if (upwards) {
      at = new Point(at.x(), at.y() + t.last() - t.anchor().y() - (n - 1) * pitch);
    }
    double turn = Math.toRadians(t.degrees());
    for (int i = 0; i < n; i++) {
      double down = i * pitch;
      Point line = new Point(at.x() + down * Math.sin(turn), at.y() + down * Math.cos(turn));
      Lettering l = fit.lettering();
      Mark label = new Mark.Label(line, fit.lines().get(i), l, t.align(), t.degrees());
      marks.add(coloured(label, t.rgb()));
    }
  }
}

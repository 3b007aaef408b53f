package headcourse.testing;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Arc;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.job.Bundle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;

/** Pages with one of everything that a sheet may hold. */
public final class SamplePages {
  private SamplePages() {}

  /** Letter pages, each with a figure, a table, notes, a link. */
  public static PageSet letter(int count) {
    List<Page> pages = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      pages.add(page(215.9, 279.4, "D1-" + i));
    }
    return new PageSet(
        Bundle.BENCH, "Mill <barn> & \"doors\"", "A. Mason", "en", "", "2026-05-04", pages);
  }

  /** One page of a size, mm. */
  public static Page page(double width, double height, String mark) {
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.Group(
            Mark.Role.FRAME,
            "frame",
            "",
            List.of(
                new Mark.Stroke(Path.rect(10, 10, width - 20, height - 20), Pen.CUT),
                label(20, height - 12, "Job 26-041", Lettering.NOTE))));
    marks.add(
        new Mark.Group(
            Mark.Role.HEADING,
            "",
            "Stone " + mark,
            List.of(label(20, 24, "Stone " + mark, Lettering.MARK))));
    marks.add(figure(mark));
    marks.add(
        new Mark.Group(
            Mark.Role.NOTES,
            "",
            "",
            List.of(
                label(20, 200, "Dust: cut wet. Ojo: piedra señalada ½ ⌀ 3°", Lettering.BODY),
                label(20, 206, "second line", Lettering.BODY))));
    marks.add(new Mark.Link(Box.of(20, 196, 60, 6), "a-" + mark));
    return new Page(
        width,
        height,
        mark,
        "Ticket " + mark,
        marks,
        List.of(
            new Page.Bookmark(1, "Opening " + mark, "o-" + mark, 0),
            new Page.Bookmark(2, "Stone " + mark, "a-" + mark, 20)));
  }

  /** A page with colours and with pictures of every kind that a frame may hold. */
  public static PageSet coloured() {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Coloured(label(20, 20, "red", Lettering.BODY), 0xFF0000));
    Path square = Path.rect(20, 30, 10, 10);
    marks.add(new Mark.Coloured(new Mark.Fill(square, Shade.BLACK), 0x0000FF));
    marks.add(new Mark.Coloured(new Mark.Stroke(square, Pen.CUT), 0x008000));
    int x = 20;
    for (int type :
        new int[] {
          BufferedImage.TYPE_INT_RGB,
          BufferedImage.TYPE_INT_ARGB,
          BufferedImage.TYPE_BYTE_GRAY,
          BufferedImage.TYPE_BYTE_BINARY,
          BufferedImage.TYPE_BYTE_INDEXED
        }) {
      marks.add(new Mark.Picture(Box.of(x, 60, 10, 10), "image/png", picture(type, "png")));
      x += 12;
    }
    for (int type : new int[] {BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_BYTE_GRAY}) {
      marks.add(new Mark.Picture(Box.of(x, 60, 10, 10), "image/jpeg", picture(type, "jpeg")));
      x += 12;
    }
    Page page = new Page(210, 297, "1", "Colours", marks, List.of());
    return new PageSet(Bundle.WALL, "Colours", "", "es", "", "", List.of(page));
  }

  /** A red diagonal on blue, 16 by 16; encoded by the JDK. */
  public static byte[] picture(int type, String format) {
    BufferedImage image = new BufferedImage(16, 16, type);
    for (int i = 0; i < 256; i++) {
      image.setRGB(i % 16, i / 16, i % 17 == 0 ? 0xFFFF0000 : 0x800000FF);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalArgumentException("no writer for " + format);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static Mark figure(String mark) {
    Path outline =
        Path.polygon(
            new Point(50, 60), new Point(110, 60), new Point(105, 150), new Point(55, 150));
    Path arc = new Path(List.of(new Arc(new Point(80, 300), 200, -1.8, 0.5)), false);
    return new Mark.Group(
        Mark.Role.FIGURE,
        "",
        "Face of stone " + mark,
        List.of(
            new Mark.Group(
                Mark.Role.STONE,
                mark,
                "Stone " + mark,
                List.of(
                    new Mark.Fill(outline, Shade.STONE),
                    new Mark.Stroke(outline, Pen.OUTLINE),
                    new Mark.Stroke(Path.circle(new Point(80, 100), 12), Pen.HIDDEN),
                    new Mark.Stroke(arc, Pen.EDGE))),
            new Mark.Group(
                Mark.Role.DIMENSIONS,
                "",
                "",
                List.of(
                    new Mark.Stroke(
                        Path.through(new Point(30, 170), new Point(30 + 152.4, 170)),
                        Pen.DIMENSION),
                    new Mark.Label(
                        new Point(106, 169),
                        "7 \u00b9\u2075\u2044\u2081\u2086\u2033",
                        Lettering.DIMENSION,
                        Mark.Align.MIDDLE,
                        0),
                    new Mark.Label(
                        new Point(45, 105),
                        "11 \u215c\u2033",
                        Lettering.DIMENSION,
                        Mark.Align.MIDDLE,
                        90)))));
  }

  private static Mark label(double x, double y, String text, Lettering lettering) {
    return new Mark.Label(new Point(x, y), text, lettering, Mark.Align.START, 0);
  }
}

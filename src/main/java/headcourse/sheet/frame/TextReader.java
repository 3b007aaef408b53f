package headcourse.sheet.frame;

import headcourse.drawing.Lettering;
import headcourse.geom.Point;
import headcourse.text.Face;
import java.util.List;

/** Reads the words and the named fields of a frame. */
final class TextReader {
  private static final String FIELD = "field-";
  private static final String CAPTION = "caption-";

  private final Complaints complaints;
  private final StyleReader styles;

  TextReader(Complaints complaints, StyleReader styles) {
    this.complaints = complaints;
    this.styles = styles;
  }

  /** Adds the lines of a text element. */
  void read(Node node, Style style, List<Item> items) {
    String id = node.get("id", "");
    String field = null;
    if (id.startsWith(FIELD) || id.startsWith(CAPTION)) {
      String name = id.substring(id.indexOf('-') + 1);
      if (!FieldNames.ALL.contains(name)) {
        complaints.error(
            node.at("id"),
            "no field is called " + name,
            "did you mean "
                + id.substring(0, id.length() - name.length())
                + FieldNames.nearest(name)
                + "?");
      }
      field = id.startsWith(FIELD) ? name : id;
    }
    Run run = new Run(node, style, Quantity.of(node, "x", complaints, 0), y(node, 0), field);
    content(node, style, run, items);
    run.end(items);
    if (field != null && run.placed == 0) {
      run.place("", items);
    }
  }

  private double y(Node node, double otherwise) {
    return Quantity.of(node, "y", complaints, otherwise);
  }

  private void content(Node node, Style style, Run run, List<Item> items) {
    for (Object o : node.content()) {
      if (o instanceof String s) {
        run.words.append(s);
      } else if (o instanceof Node child && child.name().equals("tspan")) {
        Style inner = styles.read(child, style);
        boolean moved = child.attributes().containsKey("x") || child.attributes().containsKey("y");
        if (moved) {
          run.end(items);
          run.x = Quantity.of(child, "x", complaints, run.x);
          run.y = y(child, run.y);
          run.style = inner;
        } else if (run.words.toString().isBlank()) {
          run.style = inner;
        }
        content(child, inner, run, items);
      } else if (o instanceof Node child && !child.name().isEmpty()) {
        switch (child.name()) {
          case "title", "desc" -> {}
          default ->
              complaints.error(
                  child.offset(), "<" + child.name() + "> within text is not drawn", "tspan");
        }
      }
    }
  }

  /** Words from one place on. */
  private final class Run {
    final StringBuilder words = new StringBuilder();
    final Node node;
    final String field;
    Style style;
    double x;
    double y;
    int placed;

    Run(Node node, Style style, double x, double y, String field) {
      this.node = node;
      this.style = style;
      this.x = x;
      this.y = y;
      this.field = field;
    }

    void end(List<Item> items) {
      String text = Quantity.joined(words);
      words.setLength(0);
      if (!text.isEmpty() && (field == null || placed == 0)) {
        place(text, items);
      }
    }

    void place(String text, List<Item> items) {
      placed++;
      Affine map = style.map();
      if (!map.upright()) {
        complaints.error(node.offset(), "skewed or mirrored text is not drawn in a frame");
        return;
      }
      double width = Quantity.of(node, "data-width", complaints, Double.POSITIVE_INFINITY);
      double lines = Quantity.of(node, "data-lines", complaints, 1);
      if (!(width > 0) || !(lines >= 1 && lines <= 200)) {
        complaints.error(node.at("data-width"), "a field needs room", "data-width=\"60\"");
        return;
      }
      Point at = map.apply(x, y);
      items.add(
          new Item.Text(
              at,
              new Lettering(height(map), style.bold()),
              style.align(),
              Math.toDegrees(-Math.atan2(map.b(), map.a())),
              style.fill() == Style.NONE ? 0 : style.fill(),
              field,
              width * map.scale(),
              (int) lines,
              last(map),
              text,
              at));
    }

    private double last(Affine map) {
      double y = Quantity.of(node, "data-last", complaints, Double.NaN);
      return Double.isNaN(y) ? y : map.apply(x, y).y();
    }

    private double height(Affine map) {
      double cap = style.size() * map.scale() * Face.CAP_HEIGHT;
      if (cap < Lettering.LEAST * 0.99) {
        complaints.warning(
            node.offset(),
            "capitals under 2.5 mm are drawn 2.5 mm high",
            "font-size=\"3.43\" gives capitals of 2.5 mm");
      }
      return Math.max(Lettering.LEAST, Steps.near(cap));
    }
  }
}

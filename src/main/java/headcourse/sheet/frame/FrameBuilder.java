package headcourse.sheet.frame;

import headcourse.drawing.Pen;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import java.util.ArrayList;
import java.util.List;

/** Makes a frame from the tree of its file. */
final class FrameBuilder {
  /** The thinnest line that may be printed, mm. */
  private static final double THINNEST = 0.18;

  private final Complaints complaints;
  private final StyleReader styles;
  private final ShapeReader shapes;
  private final TextReader texts;
  private final List<Item> items = new ArrayList<>();
  private Box area;
  private Box border;

  FrameBuilder(Complaints complaints) {
    this.complaints = complaints;
    styles = new StyleReader(complaints);
    shapes = new ShapeReader(complaints);
    texts = new TextReader(complaints, styles);
  }

  /** The frame, or null where a required part is missing. */
  Frame build(Node root) {
    if (!root.name().equals("svg")) {
      complaints.error(
          root.offset(),
          "not an SVG file",
          "begin with <svg xmlns=\"http://www.w3.org/2000/svg\" …>");
      return null;
    }
    double[] view = viewBox(root);
    if (view == null) {
      return null;
    }
    Style style = styles.read(root, Style.initial(new Affine(1, 0, 0, 1, -view[0], -view[1])));
    children(root, style);
    if (area == null) {
      complaints.error(
          root.offset(),
          "the drawing area is missing",
          "add <rect id=\"drawing-area\" x=… y=… width=… height=… fill=\"none\"/>");
      return null;
    }
    double binding = Quantity.of(root, "data-binding", complaints, 0);
    return new Frame(view[2], view[3], binding, items, area, border);
  }

  private double[] viewBox(Node root) {
    List<String> parts = Quantity.list(root.get("viewBox", ""));
    double[] view = new double[4];
    for (int i = 0; i < 4; i++) {
      Double v = parts.size() == 4 ? Quantity.parse(parts.get(i)) : null;
      if (v == null || i > 1 && v <= 0) {
        complaints.error(
            root.at("viewBox"), "no viewBox in millimetres", "viewBox=\"0 0 420 297\"");
        return null;
      }
      view[i] = v;
    }
    return view;
  }

  private void children(Node node, Style style) {
    for (Object o : node.content()) {
      if (o instanceof Node child) {
        element(child, style);
      }
    }
  }

  private void element(Node node, Style parent) {
    switch (node.name()) {
      case "", "title", "desc", "defs", "metadata" -> {}
      case "g" -> children(node, styles.read(node, parent));
      case "rect", "line", "polyline", "polygon", "path", "circle", "ellipse" ->
          shape(node, styles.read(node, parent));
      case "text" -> {
        Style style = styles.read(node, parent);
        if (style.shown()) {
          texts.read(node, style, items);
        }
      }
      case "image" -> image(node, styles.read(node, parent));
      case "use" ->
          complaints.error(node.offset(), "<use> is refused in a frame", "copy what it repeats");
      case "style" ->
          complaints.error(
              node.offset(), "a style sheet is not read in a frame", "write styles as attributes");
      case "script" -> {}
      default ->
          complaints.error(
              node.offset(),
              "<" + node.name() + "> is not drawn in a frame",
              "rect, line, polyline, polygon, path, circle, ellipse, text, image, g");
    }
  }

  private void shape(Node node, Style style) {
    List<Path> paths = shapes.read(node, style.map());
    if (paths.isEmpty()) {
      return;
    }
    String id = node.get("id", "");
    if (id.equals("drawing-area")) {
      area = paths.get(0).bounds();
      return;
    }
    if (id.equals("border")) {
      border = paths.get(0).bounds();
    }
    if (!style.shown()) {
      return;
    }
    boolean round = node.name().equals("circle") || node.name().equals("ellipse");
    Point anchor = round || style.rigid() ? paths.get(0).bounds().centre() : null;
    boolean open = node.name().equals("line");
    if (style.fill() != Style.NONE && !open) {
      items.add(new Item.Area(Outlines.area(paths, style.evenOdd()), style.fill(), anchor));
    }
    if (style.stroke() != Style.NONE && style.width() > 0) {
      double width = Math.max(THINNEST, style.width() * style.map().scale());
      for (Path p : paths) {
        items.add(new Item.Line(p, new Pen(width, style.pattern()), style.stroke(), anchor));
      }
    }
  }

  private void image(Node node, Style style) {
    Node.Attribute href = node.attributes().get("href");
    double w = Quantity.of(node, "width", complaints, 0);
    double h = Quantity.of(node, "height", complaints, 0);
    Affine map = style.map();
    if (href == null || w <= 0 || h <= 0) {
      complaints.error(node.offset(), "a picture without href, width or height");
      return;
    }
    if (!map.upright() || Math.abs(map.b()) > 1e-9 || map.a() <= 0) {
      complaints.error(node.offset(), "a turned picture is not drawn in a frame");
      return;
    }
    try {
      Pictures.Picture p = Pictures.read(href.value());
      Point at =
          map.apply(Quantity.of(node, "x", complaints, 0), Quantity.of(node, "y", complaints, 0));
      if (style.shown()) {
        boolean fill = node.get("preserveAspectRatio", "").strip().equals("none");
        Box box = Box.of(at.x(), at.y(), w * map.a(), h * map.a());
        items.add(new Item.Image(fill ? box : fitted(box, p), p.type(), p.data()));
      }
    } catch (IllegalArgumentException e) {
      complaints.error(href.offset(), e.getMessage());
    }
  }

  /** The largest box of the picture's shape in the middle of another. */
  private static Box fitted(Box box, Pictures.Picture p) {
    double scale = Math.min(box.width() / p.width(), box.height() / p.height());
    double w = p.width() * scale;
    double h = p.height() * scale;
    return Box.of(box.centre().x() - w / 2, box.centre().y() - h / 2, w, h);
  }
}

package headcourse.sheet.frame;

import headcourse.drawing.Mark;
import headcourse.drawing.Pen;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/** Reads how an element is drawn from its attributes and its {@code style}, which goes before. */
final class StyleReader {
  private final Complaints complaints;

  StyleReader(Complaints complaints) {
    this.complaints = complaints;
  }

  Style read(Node node, Style parent) {
    Map<String, Node.Attribute> all = new HashMap<>(node.attributes());
    declarations(node, all);
    Affine map = parent.map();
    Node.Attribute transform = node.attributes().get("transform");
    if (transform != null) {
      try {
        map = map.after(TransformReader.read(transform.value()));
        if (!map.sane()) {
          throw new IllegalArgumentException("too large");
        }
      } catch (IllegalArgumentException e) {
        map = parent.map();
        complaints.error(
            transform.offset(), "not a transform: " + transform.value(), "translate(10 20)");
      }
    }
    return new Style(
        paint(all.get("fill"), parent.fill()),
        paint(all.get("stroke"), parent.stroke()),
        length(all.get("stroke-width"), parent.width()),
        pattern(all.get("stroke-dasharray"), parent.pattern()),
        all.containsKey("fill-rule")
            ? all.get("fill-rule").value().strip().equals("evenodd")
            : parent.evenOdd(),
        length(all.get("font-size"), parent.size()),
        bold(all.get("font-weight"), parent.bold()),
        align(all.get("text-anchor"), parent.align()),
        shown(all, parent.shown()),
        map,
        parent.rigid() || node.get("data-rigid", "").equals("true"));
  }

  private static void declarations(Node node, Map<String, Node.Attribute> all) {
    Node.Attribute style = node.attributes().get("style");
    if (style == null) {
      return;
    }
    for (String d : style.value().split(";", -1)) {
      int colon = d.indexOf(':');
      if (colon > 0) {
        String value = d.substring(colon + 1).strip();
        all.put(d.substring(0, colon).strip(), new Node.Attribute(value, style.offset()));
      }
    }
  }

  private int paint(Node.Attribute a, int otherwise) {
    if (a == null || a.value().isBlank() || a.value().strip().equals("inherit")) {
      return otherwise;
    }
    String s = a.value().strip();
    if (s.equals("none") || s.equals("transparent")) {
      return Style.NONE;
    }
    if (s.equals("currentColor")) {
      return 0;
    }
    if (s.startsWith("url(")) {
      complaints.warning(a.offset(), "gradients and patterns are left out", "use a plain colour");
      return Style.NONE;
    }
    OptionalInt rgb = Colours.read(s);
    if (rgb.isEmpty()) {
      complaints.error(a.offset(), "not a colour: " + s, "#rrggbb, rgb(r, g, b) or a plain name");
    }
    return rgb.orElse(0);
  }

  private double length(Node.Attribute a, double otherwise) {
    return a == null ? otherwise : Quantity.read(a, complaints, otherwise);
  }

  /** Any pattern becomes one of the three that a drawing knows. */
  private static Pen.Pattern pattern(Node.Attribute a, Pen.Pattern otherwise) {
    if (a == null) {
      return otherwise;
    }
    String s = a.value().strip();
    if (s.equals("none") || s.isEmpty()) {
      return Pen.Pattern.SOLID;
    }
    return Quantity.list(s).size() > 2 ? Pen.Pattern.CHAIN : Pen.Pattern.DASHED;
  }

  private static boolean bold(Node.Attribute a, boolean otherwise) {
    if (a == null) {
      return otherwise;
    }
    String s = a.value().strip();
    return switch (s) {
      case "bold", "bolder", "600", "700", "800", "900" -> true;
      case "inherit" -> otherwise;
      default -> false;
    };
  }

  private static Mark.Align align(Node.Attribute a, Mark.Align otherwise) {
    if (a == null) {
      return otherwise;
    }
    return switch (a.value().strip()) {
      case "middle" -> Mark.Align.MIDDLE;
      case "end" -> Mark.Align.END;
      case "start" -> Mark.Align.START;
      default -> otherwise;
    };
  }

  private static boolean shown(Map<String, Node.Attribute> all, boolean otherwise) {
    Node.Attribute display = all.get("display");
    Node.Attribute visibility = all.get("visibility");
    boolean hidden =
        display != null && display.value().strip().equals("none")
            || visibility != null && visibility.value().strip().equals("hidden");
    return otherwise && !hidden;
  }
}

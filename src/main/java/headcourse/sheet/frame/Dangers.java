package headcourse.sheet.frame;

import java.util.Locale;

/** Attributes that run something or reach out of the file, wherever they stand. */
final class Dangers {
  static final String XLINK = "http://www.w3.org/1999/xlink";

  private Dangers() {}

  static boolean isScript(String element) {
    return element.equalsIgnoreCase("script");
  }

  /** Complains of an attribute, whose name is given without its prefix. */
  static void look(String name, boolean link, Node.Attribute a, Complaints complaints) {
    String low = a.value().toLowerCase(Locale.ROOT);
    if (name.toLowerCase(Locale.ROOT).startsWith("on")) {
      complaints.error(a.offset(), "a script is refused in a frame: attribute " + name);
    } else if (link && !low.startsWith("data:") && !low.startsWith("#")) {
      complaints.error(
          a.offset(),
          "a reference out of the file is refused: " + shown(a.value()),
          "embed the picture: href=\"data:image/png;base64,…\"");
    } else if (name.equals("base")) {
      complaints.error(a.offset(), "a base for references is refused in a frame");
    }
    for (int i = low.indexOf("url("); i >= 0; i = low.indexOf("url(", i + 4)) {
      String target = low.substring(i + 4).strip();
      if (!target.startsWith("#") && !target.startsWith("'#") && !target.startsWith("\"#")) {
        complaints.error(a.offset(), "a reference out of the file is refused: " + shown(a.value()));
        return;
      }
    }
  }

  private static String shown(String value) {
    return value.length() <= 60 ? value : value.substring(0, 60) + "…";
  }
}

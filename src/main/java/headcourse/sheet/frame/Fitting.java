package headcourse.sheet.frame;

import headcourse.drawing.Lettering;
import headcourse.text.Face;
import headcourse.text.Wrap;
import java.util.ArrayList;
import java.util.List;

/**
 * A text fitted into the room and the lines of its field: as it is; else one step smaller; else not
 * bold; else on more lines of the least lettering; cut short with an ellipsis only beyond those.
 *
 * @param lettering what it is written in
 * @param lines at least one
 */
record Fitting(Lettering lettering, List<String> lines) {
  /** A text on one line where that can be read, else on as few as hold it. */
  static Fitting growing(String text, Lettering wanted, double width, int most) {
    Lettering least = new Lettering(Lettering.LEAST, wanted.bold());
    Fitting one = of(text, wanted, width, 1);
    if (most == 1 || !one.lines().get(0).endsWith("…") || text.endsWith("…")) {
      return one;
    }
    for (int n = 2; n <= most; n++) {
      for (Lettering l : List.of(least, new Lettering(Lettering.LEAST, false))) {
        List<String> lines = wrapped(text, l, width);
        if (lines.size() <= n) {
          return new Fitting(l, lines);
        }
      }
    }
    return of(text, new Lettering(Lettering.LEAST, false), width, most);
  }

  static Fitting of(String text, Lettering wanted, double width, int most) {
    Lettering small = new Lettering(Steps.below(wanted.height()), wanted.bold());
    Lettering plain = new Lettering(small.height(), false);
    for (Lettering l : List.of(wanted, small, plain)) {
      List<String> lines = wrapped(text, l, width);
      if (lines.size() <= most && widest(lines, l) <= width) {
        return new Fitting(l, lines);
      }
    }
    Face face = Face.of(false);
    List<String> lines = new ArrayList<>(wrapped(text, plain, width));
    if (lines.size() > most) {
      String rest = String.join(" ", lines.subList(most - 1, lines.size()));
      lines = new ArrayList<>(lines.subList(0, most - 1));
      lines.add(rest);
    }
    lines.replaceAll(s -> Wrap.shortened(s, face, plain.height(), width));
    return new Fitting(plain, lines);
  }

  private static List<String> wrapped(String text, Lettering l, double width) {
    return width == Double.POSITIVE_INFINITY
        ? List.of(l.written(text).split("\n", -1))
        : Wrap.lines(l.written(text), Face.of(l.bold()), l.height(), width);
  }

  private static double widest(List<String> lines, Lettering l) {
    double w = 0;
    for (String s : lines) {
      w = Math.max(w, Face.of(l.bold()).width(s, l.height()));
    }
    return w;
  }

  /** From one base line to the next, mm. */
  double pitch() {
    return pitch(lettering.height());
  }

  /** The same of a height of capitals, mm. */
  static double pitch(double height) {
    return height * 1.6;
  }

  /** Whether there was no room for all of it. */
  boolean cut() {
    return lines.get(lines.size() - 1).endsWith("…");
  }

  /** The same where lines stand close. */
  double closePitch() {
    return lettering.height() * 1.4;
  }
}

package headcourse.text;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into lines that fit a width. */
public final class Wrap {
  private Wrap() {}

  /**
   * Lines no wider than a width; a word wider than that is broken between letters.
   *
   * @param text words with single blanks; line feeds force a break
   * @param face the face
   * @param capHeight height of capitals, mm
   * @param width mm, positive
   */
  public static List<String> lines(String text, Face face, double capHeight, double width) {
    List<String> lines = new ArrayList<>();
    for (String paragraph : text.split("\n", -1)) {
      String line = "";
      for (String word : paragraph.split(" ")) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (face.width(longer, capHeight) <= width) {
          line = longer;
          continue;
        }
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = word;
        while (face.width(line, capHeight) > width && line.length() > 1) {
          int cut = line.length() - 1;
          while (cut > 1 && face.width(line.substring(0, cut), capHeight) > width) {
            cut--;
          }
          lines.add(line.substring(0, cut));
          line = line.substring(cut);
        }
      }
      lines.add(line);
    }
    return lines;
  }
}

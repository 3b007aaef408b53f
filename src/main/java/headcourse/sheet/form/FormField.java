package headcourse.sheet.form;

import java.util.ArrayList;
import java.util.List;

/**
 * A box of the measuring sheet.
 *
 * @param path where what is written in it stands in the job file; empty for what is only measured
 *     to check the rest
 * @param name what is printed as its name: the key, or for a key within a key both
 * @param words key of what it means
 * @param place its number on the picture, 0 where it is not measured on the opening
 * @param columns how wide it is, in twelfths of the sheet
 */
public record FormField(String path, String name, String words, int place, int columns) {
  private static final String OPENING = "openings[0].";

  /** All of them, in the order of the job file. */
  public static final List<FormField> ALL = all();

  private static List<FormField> all() {
    List<FormField> f = new ArrayList<>();
    f.add(of("", "units", 2));
    f.add(of("job.", "number", 2));
    f.add(of("job.", "title", 4));
    f.add(of("job.", "site", 4));
    f.add(of("job.", "client", 3));
    f.add(of("job.", "mason", 3));
    f.add(of("job.", "date", 2));
    f.add(of("stone.", "name", 2));
    f.add(of("stone.", "thickness", 2));
    f.add(of("wall.", "sheathing", 2));
    f.add(of("wall.", "framing", 2));
    f.add(on("wall.", "backing", 1, 4));
    f.add(on("wall.", "courses", 2, 4));
    f.add(of(OPENING, "mark", 2));
    f.add(of(OPENING, "label", 4));
    f.add(of(OPENING, "count", 2));
    f.add(on(OPENING, "at", 3, 2));
    f.add(on(OPENING, "level", 4, 2));
    f.add(of(OPENING, "width", 2));
    f.add(on(OPENING, "height", 5, 2));
    f.add(on(OPENING, "sill", 6, 2));
    f.add(on(OPENING, "ground", 7, 2));
    f.add(on(OPENING, "reveal", 8, 4));
    f.add(on(OPENING, "wall-left", 9, 2));
    f.add(on(OPENING, "wall-right", 10, 2));
    f.add(measured("width", "head", 11));
    f.add(measured("width", "middle", 12));
    f.add(measured("width", "sill", 13));
    f.add(new FormField("", "", "diagonals", 14, 2));
    f.add(measured("soffit", "left", 15));
    f.add(measured("soffit", "centre", 16));
    f.add(measured("soffit", "right", 17));
    f.add(measured("plumb", "left", 18));
    f.add(measured("plumb", "right", 19));
    f.add(new FormField(OPENING + "measured.centre-off", "centre-off", "centre-off", 20, 2));
    return List.copyOf(f);
  }

  private static FormField of(String in, String key, int columns) {
    return on(in, key, 0, columns);
  }

  private static FormField on(String in, String key, int place, int columns) {
    return new FormField(in + key, key, key, place, columns);
  }

  private static FormField measured(String of, String key, int place) {
    String path = OPENING + "measured." + of + "." + key;
    return new FormField(path, of + ": " + key, of + "-" + key, place, 2);
  }

  /** The key that it stands under in the file; empty at its top. */
  String section() {
    return path.contains(".") ? path.substring(0, path.indexOf('.')) : "";
  }
}

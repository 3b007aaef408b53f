package headcourse.mutation;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Changes a yard's list as a spreadsheet or a hand would spoil it. */
public final class YardMutator {
  private static final List<String> ODD =
      List.of(
          "0",
          "-1",
          "1",
          "1/64",
          "1/0",
          "0.0001",
          "1e9",
          "9999",
          "99999999999999",
          "NaN",
          "none",
          "",
          "  ",
          "-5 mm",
          "0.001 mm",
          "4000 mm",
          "2' 4 1/2\"",
          "7 15/16\"",
          "½",
          "7,5",
          "\"7\"\"\"",
          "\"a",
          "=1+1",
          "corner",
          "flat",
          "P1",
          "K",
          "D1-R1",
          "C1#1",
          "日本",
          "\u0000",
          "x;y",
          "true",
          "13 13",
          "8",
          "6",
          "12.5",
          "24",
          "3/4",
          "2 1/2");

  private final List<String> lines;

  /** Of a list as it stands. */
  public YardMutator(String csv) {
    lines = csv.lines().toList();
  }

  /** The list with one to three changes, in one encoding or another. */
  public byte[] next(long seed) {
    Random r = new Random(seed * 0x9E3779B97F4A7C15L);
    List<String> all = new ArrayList<>(lines);
    for (int n = 1 + r.nextInt(3); n > 0 && !all.isEmpty(); n--) {
      change(all, r);
    }
    String text = String.join(r.nextInt(5) == 0 ? "\r\n" : "\n", all);
    String mark = r.nextInt(10) == 0 ? "\uFEFF" : "";
    Charset in = r.nextInt(8) == 0 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    return (mark + text).getBytes(in);
  }

  private static void change(List<String> all, Random r) {
    int i = r.nextInt(all.size());
    String line = all.get(i);
    switch (r.nextInt(12)) {
      case 0 -> all.remove(i);
      case 1 -> all.add(i, all.get(r.nextInt(all.size())));
      case 2 -> all.set(i, line.replace(",", r.nextBoolean() ? ";" : "\t"));
      case 3 -> all.set(i, line + ",x");
      case 4 -> all.set(i, line.substring(0, r.nextInt(line.length() + 1)));
      default -> {
        String[] cells = line.split(",", -1);
        cells[r.nextInt(cells.length)] = ODD.get(r.nextInt(ODD.size()));
        all.set(i, String.join(",", cells));
      }
    }
  }
}

package headcourse.export;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.SoffitNotch;
import headcourse.bench.SoffitPiece;
import headcourse.layout.PlacedStone;
import headcourse.stock.StockPlan;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** One row a stone: {@code cut-list.csv}. Lengths as the job writes them, and in millimetres. */
public final class CutListCsv {
  private static final List<String> LENGTHS =
      List.of(
          "bottom",
          "top",
          "height",
          "left-edge",
          "right-edge",
          "diagonal-rising",
          "diagonal-falling",
          "thickness",
          "return",
          "relief");

  private CutListCsv() {}

  /** The file's text. */
  public static String write(ShopWork work) {
    // Several where openings are identical, or where a stone is made of two flats.
    Map<String, Set<String>> blanks = new TreeMap<>();
    for (StockPlan.CutBlank b : work.stock().blanks()) {
      for (StockPlan.Cut c : b.cuts()) {
        blanks.computeIfAbsent(c.stone(), k -> new LinkedHashSet<>()).add(b.id());
      }
    }
    LengthFormat format = new LengthFormat(work.job().units(), work.job().grid());
    CsvWriter csv = new CsvWriter();
    csv.row(heading());
    for (HeadWork head : work.heads()) {
      for (Piece p : head.pieces()) {
        csv.row(row(head, p, format, String.join(" ", blanks.getOrDefault(p.mark(), Set.of()))));
      }
    }
    return csv.toString();
  }

  private static List<String> heading() {
    List<String> h =
        new ArrayList<>(List.of("mark", "opening", "count", "role", "side", "set-order", "alike"));
    h.addAll(LENGTHS);
    for (String l : LENGTHS) {
      h.add(l + "-mm");
    }
    h.addAll(
        List.of(
            "left-rake-deg",
            "right-rake-deg",
            "left-long-point",
            "right-long-point",
            "mass-kg",
            "notches",
            "screws",
            "blank",
            "soffit-pieces",
            "soffit-screws"));
    return h;
  }

  private static List<String> row(HeadWork head, Piece p, LengthFormat format, String blank) {
    PlacedStone s = p.stone();
    List<String> r =
        new ArrayList<>(
            List.of(
                p.mark(),
                head.layout().opening().mark(),
                Integer.toString(head.layout().opening().count()),
                s.role().word(),
                s.side().word(),
                Integer.toString(p.setOrder()),
                Integer.toString(p.alike())));
    List<Length> lengths =
        List.of(
            s.bottom(),
            s.top(),
            s.height(),
            p.leftEdge(),
            p.rightEdge(),
            p.diagonalRising(),
            p.diagonalFalling(),
            p.thickness(),
            p.returnDepth(),
            p.relief());
    for (Length l : lengths) {
      r.add(format.plain(l));
    }
    for (Length l : lengths) {
      r.add(JsonWriter.decimal(l.mm()));
    }
    r.add(JsonWriter.decimal(p.left().offSquare().degrees()));
    r.add(JsonWriter.decimal(p.right().offSquare().degrees()));
    r.add(p.left().longPoint().name().toLowerCase(Locale.ROOT));
    r.add(p.right().longPoint().name().toLowerCase(Locale.ROOT));
    r.add(JsonWriter.decimal(p.massKg()));
    List<String> notches = new ArrayList<>();
    List<String> screws = new ArrayList<>();
    for (Notch n : p.notches()) {
      notches.add(n.edge().word() + " " + format.plain(n.height()));
      screws.add(screw(n, format));
    }
    r.add(String.join("; ", notches));
    r.add(String.join("; ", screws));
    r.add(blank);
    List<String> soffit = new ArrayList<>();
    List<String> up = new ArrayList<>();
    for (SoffitPiece piece : p.soffitPieces()) {
      soffit.add(
          String.join(
              " x ",
              piece.mark() + " " + format.plain(piece.length()),
              format.plain(piece.depth()),
              format.plain(piece.thickness())));
      for (SoffitNotch n : piece.notches()) {
        Length screw = n.anchor().screw();
        up.add(n.edge().word() + " " + (screw == null ? "none that holds" : format.plain(screw)));
      }
    }
    r.add(String.join("; ", soffit));
    r.add(String.join("; ", up));
    return r;
  }

  private static String screw(Notch n, LengthFormat format) {
    return n.screw() == null ? "none long enough" : format.plain(n.screw());
  }
}

package headcourse.export;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.export.CsvWriter.Column;
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
import java.util.function.Function;
import java.util.stream.Collectors;

/** One row a stone: {@code cut-list.csv}. Lengths as the job writes them, and in millimetres. */
public final class CutListCsv {
  private CutListCsv() {}

  private record Row(HeadWork head, Piece piece) {}

  private record Size(String name, Function<Piece, Length> of) {}

  private static final List<Size> SIZES =
      List.of(
          new Size("bottom", p -> p.stone().bottom()),
          new Size("top", p -> p.stone().top()),
          new Size("height", p -> p.stone().height()),
          new Size("left-edge", x -> x.measures().leftEdge()),
          new Size("right-edge", x -> x.measures().rightEdge()),
          new Size("diagonal-rising", x -> x.measures().rising()),
          new Size("diagonal-falling", x -> x.measures().falling()),
          new Size("thickness", Piece::thickness),
          new Size("return", x -> x.leg().depth()),
          new Size("relief", x -> x.leg().relief()));

  /** The file's text. */
  public static String write(ShopWork work) {
    List<Row> rows = new ArrayList<>();
    for (HeadWork head : work.heads()) {
      head.pieces().forEach(p -> rows.add(new Row(head, p)));
    }
    LengthFormat format = new LengthFormat(work.job().units(), work.job().grid());
    return CsvWriter.table(columns(format, blanks(work)), rows);
  }

  /** Several where openings are identical, or where a stone is made of two flats. */
  private static Map<String, Set<String>> blanks(ShopWork work) {
    Map<String, Set<String>> blanks = new TreeMap<>();
    for (StockPlan.CutBlank b : work.stock().blanks()) {
      for (StockPlan.Cut c : b.cuts()) {
        blanks.computeIfAbsent(c.stone(), k -> new LinkedHashSet<>()).add(b.id());
      }
    }
    return blanks;
  }

  private static List<Column<Row>> columns(LengthFormat format, Map<String, Set<String>> blanks) {
    List<Column<Row>> c = new ArrayList<>();
    c.add(new Column<>("mark", r -> r.piece.mark()));
    c.add(new Column<>("opening", r -> r.head.layout().opening().mark()));
    c.add(new Column<>("count", r -> Integer.toString(r.head.layout().opening().count())));
    c.add(new Column<>("role", r -> r.piece.stone().role().word()));
    c.add(new Column<>("side", r -> r.piece.stone().side().word()));
    c.add(new Column<>("set-order", r -> Integer.toString(r.piece.setOrder())));
    c.add(new Column<>("alike", r -> Integer.toString(r.piece.alike())));
    for (Size s : SIZES) {
      c.add(new Column<>(s.name, r -> CsvWriter.size(format, s.of.apply(r.piece))));
    }
    for (Size s : SIZES) {
      c.add(new Column<>(s.name + "-mm", r -> JsonWriter.decimal(s.of.apply(r.piece).mm())));
    }
    c.add(new Column<>("left-rake-deg", r -> degrees(r.piece.left().offSquare().degrees())));
    c.add(new Column<>("right-rake-deg", r -> degrees(r.piece.right().offSquare().degrees())));
    c.add(new Column<>("left-long-point", r -> word(r.piece.left().longPoint())));
    c.add(new Column<>("right-long-point", r -> word(r.piece.right().longPoint())));
    c.add(new Column<>("mass-kg", r -> JsonWriter.decimal(r.piece.mass().kg())));
    c.add(
        new Column<>(
            "notches", r -> each(r, n -> n.edge().word() + " " + format.plain(n.height()))));
    c.add(new Column<>("screws", r -> each(r, n -> screw(n, format))));
    c.add(
        new Column<>(
            "blank", r -> String.join(" ", blanks.getOrDefault(r.piece.mark(), Set.of()))));
    c.add(new Column<>("soffit-pieces", r -> soffits(r, format)));
    c.add(new Column<>("soffit-screws", r -> soffitScrews(r, format)));
    return c;
  }

  private static String soffits(Row row, LengthFormat format) {
    return row.piece.soffitPieces().stream()
        .map(
            s ->
                String.join(
                    " x ",
                    s.mark() + " " + format.plain(s.length()),
                    format.plain(s.depth()),
                    format.plain(s.thickness())))
        .collect(Collectors.joining("; "));
  }

  private static String soffitScrews(Row row, LengthFormat format) {
    return row.piece.soffitPieces().stream()
        .flatMap(s -> s.notches().stream())
        .map(n -> n.edge().word() + " " + screw(n.anchor().screw(), format))
        .collect(Collectors.joining("; "));
  }

  private static String screw(Length screw, LengthFormat format) {
    return screw == null ? "none that holds" : CsvWriter.size(format, screw);
  }

  private static String degrees(double angle) {
    return JsonWriter.decimal(angle);
  }

  private static String word(Enum<?> what) {
    return what.name().toLowerCase(Locale.ROOT);
  }

  private static String each(Row row, Function<Notch, String> said) {
    return row.piece.notches().stream().map(said).collect(Collectors.joining("; "));
  }

  private static String screw(Notch n, LengthFormat format) {
    return n.screw() == null ? "none long enough" : CsvWriter.size(format, n.screw());
  }
}

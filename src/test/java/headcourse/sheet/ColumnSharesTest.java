package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.sheet.Table.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Columns share the width out so that as few cells as may be run over. */
class ColumnSharesTest {
  private static final Lettering TEXT = new Lettering(3.5, false);

  private static double width(List<Column> columns) {
    return columns.stream().mapToDouble(Column::width).sum();
  }

  @Test
  void columnsTakeTheWholeWidthAndWhoNeedsLittleHasIt() {
    Random random = new Random(7);
    for (int n = 0; n < 500; n++) {
      List<Column> weighted = new ArrayList<>();
      List<String> row = new ArrayList<>();
      for (int i = 0; i < 2 + random.nextInt(6); i++) {
        weighted.add(new Column("c", 5 + random.nextInt(60), Align.START, false));
        row.add("x".repeat(random.nextInt(30)));
      }
      double room = 60 + random.nextInt(200);
      List<Column> out = ColumnShares.of(weighted, List.of(row), TEXT, room);
      assertEquals(room, width(out), 1e-6);
      double sum = width(weighted);
      for (int i = 0; i < out.size(); i++) {
        double fair = weighted.get(i).width() / sum * room;
        double need = LabelShape.width(row.get(i), TEXT) + 2 * Table.PAD;
        // Whoever needs no more than a fair share has what it needs.
        assertTrue(need > fair || out.get(i).width() >= need - 1e-6, "column " + i + " of " + n);
      }
    }
  }

  @Test
  void longCellsGetWhatShortOnesLeave() {
    List<Column> weighted =
        List.of(new Column("", 50, Align.START, false), new Column("", 50, Align.START, false));
    List<Column> out = ColumnShares.of(weighted, List.of(List.of("1", "x".repeat(30))), TEXT, 100);
    double need = LabelShape.width("x".repeat(30), TEXT) + 2 * Table.PAD;
    assertTrue(need > 60 && need < 90, "a case of no use");
    assertTrue(out.get(1).width() >= need);
  }

  /** Long sentences beside it do not break a word in two. */
  @Test
  void wordsStayWhole() {
    List<Column> weighted =
        List.of(new Column("end", 10, Align.START, true), new Column("", 190, Align.START, false));
    List<String> row = List.of("left / izquierda", "many words ".repeat(40));
    List<Column> out = ColumnShares.of(weighted, List.of(row), TEXT, 100);
    assertEquals(100, width(out), 1e-6);
    double word = LabelShape.width("izquierda", TEXT.inBold()) + 2 * Table.PAD;
    assertTrue(word > 5, "a case of no use");
    assertTrue(out.get(0).width() >= word, out.toString());
  }
}

package headcourse.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark;
import headcourse.drawing.Mark.Align;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A row that is taller than the paper goes on over the page, with nothing lost or said twice. */
class TableCutTest {
  private static final Lettering CELL = new Lettering(2.5, false);

  private static void texts(List<Mark> marks, List<String> found) {
    for (Mark m : marks) {
      if (m instanceof Mark.Group g) {
        texts(g.marks(), found);
      } else if (m instanceof Mark.Label l) {
        found.addAll(List.of(l.text().split(" ")));
      }
    }
  }

  @Test
  void everyWordOfTallRowsIsPrintedOnceAndInOrder() {
    Random random = new Random(5);
    for (int trial = 0; trial < 200; trial++) {
      List<List<String>> rows = new ArrayList<>();
      List<String> words = new ArrayList<>();
      for (int r = 0; r < 1 + random.nextInt(5); r++) {
        StringBuilder cell = new StringBuilder();
        for (int w = 0; w < 1 + random.nextInt(random.nextInt(4) == 0 ? 900 : 9); w++) {
          String word = "D" + r + "-L" + w;
          words.add(word);
          cell.append(w == 0 ? "" : " ").append(word);
        }
        rows.add(List.of(cell.toString(), "", ""));
      }
      double width = 30 + random.nextInt(60);
      List<Table.Column> columns =
          List.of(
              new Table.Column("stones", width, Align.START, false),
              new Table.Column("", 10, Align.END, true),
              new Table.Column("at", 10, Align.MIDDLE, false));
      double page = 40 + random.nextInt(200);
      Table table = new Table(columns, rows, CELL).cut(page / 2);
      List<String> printed = new ArrayList<>();
      int next = 0;
      while (next < table.rows().size()) {
        Board board = new Board();
        Table.Drawn drawn = table.draw(board, 0, 0, page, next);
        assertTrue(drawn.nextRow() > next, "a page with no row");
        assertTrue(drawn.bottom() <= page + 1e-6, "past the page's foot");
        next = drawn.nextRow();
        texts(board.marks(), printed);
      }
      printed.removeAll(List.of("stones", "at"));
      assertEquals(words, printed);
    }
  }
}

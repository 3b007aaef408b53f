package headcourse.sheet.picture;

import headcourse.drawing.Board;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Page;
import headcourse.sheet.elevation.ScaleBar;
import headcourse.text.Words;
import headcourse.work.ShopWork;
import java.util.List;

/** The picture of a job's openings as a page of its own, as large as it needs to be. */
public final class PicturePage {
  private static final double MARGIN = 6;

  /** Room for four openings: narrow enough to be read on a telephone, mm. */
  private static final double WIDTH = 220;

  private static final double HEIGHT = 200;
  private static final double BAR = 12;

  private PicturePage() {}

  /** The page. */
  public static Page of(ShopWork work) {
    Words words = Words.of(work.job().language().word());
    Pictures all = Pictures.of(work, words, WIDTH, HEIGHT);
    double width = 0;
    double height = BAR + 6;
    for (int i = 0; i < all.pages(); i++) {
      width = Math.max(width, all.width(i));
      height += all.height(i) + MARGIN;
    }
    width = Math.max(width, 130);
    Board board = new Board();
    double y = MARGIN;
    for (int i = 0; i < all.pages(); i++) {
      all.draw(board, i, MARGIN, y);
      y += all.height(i) + MARGIN;
    }
    String seen = words.say("picture.seen", all.scale().name());
    board.text(MARGIN, y + 3, seen, Lettering.NOTE, Align.START);
    ScaleBar.draw(board, words, work.job().units(), all.scale(), MARGIN, y + 6, width);
    String title = words.say("picture.title");
    return new Page(width + 2 * MARGIN, height + MARGIN, "", title, board.marks(), List.of());
  }
}

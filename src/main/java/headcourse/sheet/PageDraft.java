package headcourse.sheet;

import headcourse.drawing.Board;
import headcourse.drawing.Page.Bookmark;
import headcourse.drawing.Translation;
import headcourse.geom.Box;
import headcourse.text.SecondLanguage;
import java.util.ArrayList;
import java.util.List;

/** A page while it is being composed; frame and numbering come when the bundle is whole. */
public final class PageDraft {
  private final double width;
  private final double height;
  private final Box area;
  private final String label;
  private final String title;
  private final Board board = new Board();
  private final List<Bookmark> bookmarks = new ArrayList<>();
  private String scale = "";

  PageDraft(double width, double height, Box area, String label, String title) {
    this.width = width;
    this.height = height;
    this.area = area;
    this.label = label;
    this.title = SecondLanguage.plain(title);
  }

  /** The same page under another label. */
  PageDraft labelled(String other) {
    PageDraft same = new PageDraft(width, height, area, other, title);
    same.board.addAll(board.marks());
    same.bookmarks.addAll(bookmarks);
    same.scale = scale;
    return same;
  }

  /** The same page with another on it, moved. */
  PageDraft with(PageDraft more, double dx, double dy) {
    PageDraft both = new PageDraft(width, height, area, label, title + " · " + more.title);
    both.board.addAll(board.marks());
    more.board.marks().forEach(m -> both.board.add(Translation.by(dx, dy, m)));
    both.bookmarks.addAll(bookmarks);
    for (Bookmark b : more.bookmarks) {
      both.bookmark(b.level(), b.text(), b.anchor(), b.y() + dy);
    }
    both.scale = scale.equals(more.scale) ? scale : "";
    return both;
  }

  /** Page width, mm. */
  public double width() {
    return width;
  }

  /** Page height, mm. */
  public double height() {
    return height;
  }

  /** Where the drawing may lie. */
  public Box area() {
    return area;
  }

  /** Page label, as in {@code D1}. */
  public String label() {
    return label;
  }

  /** Title of the sheet. */
  public String title() {
    return title;
  }

  /** What is drawn on. */
  public Board board() {
    return board;
  }

  /** Scale named in the title block; empty where there are several or none. */
  public String scale() {
    return scale;
  }

  /** Names the scale. */
  public void scale(String name) {
    scale = name;
  }

  /** Adds an entry to the bundle's outline tree; the anchor is unique in the bundle. */
  public void bookmark(int level, String text, String anchor, double y) {
    bookmarks.add(new Bookmark(level, SecondLanguage.plain(text), anchor, y));
  }

  List<Bookmark> bookmarks() {
    return bookmarks;
  }
}

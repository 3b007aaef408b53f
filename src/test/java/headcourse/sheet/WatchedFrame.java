package headcourse.sheet;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.geom.Box;
import headcourse.testing.PageInspector;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A frame that remembers what it drew, so that a sheet's faults can be told from its own. */
public final class WatchedFrame implements SheetFrame {
  private final SheetFrame frame;
  private final List<List<Mark>> drawn = new ArrayList<>();

  /** Watches a frame. */
  public WatchedFrame(SheetFrame frame) {
    this.frame = frame;
  }

  @Override
  public List<Mark> place(double w, double h, Map<String, String> fields) {
    List<Mark> marks = frame.place(w, h, fields);
    drawn.add(marks);
    return marks;
  }

  @Override
  public Box area(double w, double h) {
    return frame.area(w, h);
  }

  /** Faults of pages, in their order, that are not the frame's with itself. */
  public List<String> faults(List<Page> pages) {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      Page p = pages.get(i);
      Page bare =
          new Page(p.width(), p.height(), p.label(), p.title(), drawn.get(i), p.bookmarks());
      List<String> own = PageInspector.faults(bare);
      PageInspector.faults(p).stream().filter(f -> !own.contains(f)).forEach(faults::add);
    }
    return faults;
  }
}

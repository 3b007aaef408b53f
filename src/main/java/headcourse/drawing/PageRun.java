package headcourse.drawing;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.IntFunction;

/** Pages whose frames are drawn as they are asked for, each time anew. */
public final class PageRun extends AbstractList<Page> implements RandomAccess {
  private final List<Page> blank;
  private final List<List<Mark>> drawings;
  private final IntFunction<List<Mark>> frame;
  private final boolean once;

  /**
   * A run.
   *
   * @param blank the pages without marks
   * @param drawings what is on each
   * @param frame what is around each, by its place from 0; painted first
   */
  public PageRun(List<Page> blank, List<List<Mark>> drawings, IntFunction<List<Mark>> frame) {
    this(List.copyOf(blank), new ArrayList<>(drawings), frame, false);
  }

  private PageRun(
      List<Page> blank, List<List<Mark>> drawings, IntFunction<List<Mark>> frame, boolean once) {
    this.blank = blank;
    this.drawings = drawings;
    this.frame = frame;
    this.once = once;
  }

  List<Page> blank() {
    return blank;
  }

  PageRun once() {
    return new PageRun(blank, drawings, frame, true);
  }

  /**
   * A page.
   *
   * @throws IllegalStateException where it was forgotten
   */
  @Override
  public Page get(int at) {
    List<Mark> drawing = drawings.get(at);
    if (drawing == null) {
      throw new IllegalStateException("page " + (at + 1) + " was asked for once, and is gone");
    }
    if (once) {
      drawings.set(at, null);
    }
    List<Mark> marks = new ArrayList<>(frame.apply(at));
    marks.addAll(drawing);
    return blank.get(at).with(marks);
  }

  @Override
  public int size() {
    return blank.size();
  }
}

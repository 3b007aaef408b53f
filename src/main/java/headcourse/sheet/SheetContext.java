package headcourse.sheet;

import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Paper;
import headcourse.text.Words;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;

/**
 * What every composer needs.
 *
 * @param work the job worked out
 * @param bundle the bundle being composed
 * @param words the words of the job's language
 * @param format how lengths are written
 * @param frame the sheet's frame
 */
public record SheetContext(
    ShopWork work, Bundle bundle, Words words, LengthFormat format, SheetFrame frame) {
  /** The job. */
  public Job job() {
    return work.job();
  }

  /** The paper of the bundle. */
  public Paper paper() {
    return job().papers().of(bundle);
  }

  /** A word or a sentence; see {@link Words}. */
  public String say(String key, Object... values) {
    return words.say(key, values);
  }

  /** A blank page. */
  public PageDraft page(Turn turn, String label, String title) {
    double w = paper().width().mm();
    double h = paper().height().mm();
    boolean wide = turn == Turn.LANDSCAPE;
    double pw = wide ? h : w;
    double ph = wide ? w : h;
    return new PageDraft(pw, ph, frame.area(pw, ph), label, title);
  }

  /** The room for drawing on a page turned so. */
  public Box area(Turn turn) {
    return page(turn, "", "").area();
  }

  /** How a page is turned. */
  public enum Turn {
    /** Upright. */
    PORTRAIT,
    /** On its side. */
    LANDSCAPE
  }
}

package headcourse.sheet;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.geom.Box;
import headcourse.job.Bundle;
import headcourse.job.Job;
import headcourse.job.Paper;
import headcourse.layout.Role;
import headcourse.text.Words;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import java.util.function.Function;

/**
 * What every composer needs.
 *
 * @param work the job worked out
 * @param bundle the bundle being composed
 * @param words the words of the job's language
 * @param format how lengths are written
 * @param frame the sheet's frame
 * @param index the sheets of the set, as far as they are known
 * @param begins where a sheet's first page begins on paper, mm; 0 at the top of the frame's room
 */
public record SheetContext(
    ShopWork work,
    Bundle bundle,
    Words words,
    LengthFormat format,
    SheetFrame frame,
    SheetIndex index,
    double begins) {
  private static final double NARROW = 140;
  private static final double ROLL_PAGE = 1.5;

  /** What composers need before any sheet is composed. */
  public SheetContext(
      ShopWork work, Bundle bundle, Words words, LengthFormat format, SheetFrame frame) {
    this(work, bundle, words, format, frame, SheetIndex.EMPTY, 0);
  }

  /** The same with the sheets of the set known. */
  public SheetContext with(SheetIndex known) {
    return new SheetContext(work, bundle, words, format, frame, known, begins);
  }

  /** The same for a sheet whose first page begins so far down, mm from the paper's top. */
  public SheetContext beginning(double down) {
    return new SheetContext(work, bundle, words, format, frame, index, down);
  }

  /** The job. */
  public Job job() {
    return work.job();
  }

  /** The paper of the bundle. */
  public Paper paper() {
    return job().papers().of(bundle);
  }

  /** The same for what is said of one head: an arch has words of its own. */
  public SheetContext of(HeadWork head) {
    Words its = words.ofArch(head.layout().curved());
    return its == words ? this : new SheetContext(work, bundle, its, format, frame, index, begins);
  }

  /** What a stone weighs, in the words of the job's units: {@code weight 12.8 lb}. */
  public String weighs(String key, Object... values) {
    boolean inches = job().units() == Units.INCH;
    return say(inches ? key.replace("mass", "weight") : key, values);
  }

  /** A word or a sentence; see {@link Words}. */
  public String say(String key, Object... values) {
    return words.say(key, values);
  }

  /** A sentence that is put together in each language by itself; see {@link Words}. */
  public String say(Function<Words, String> sentence) {
    return words.say(sentence);
  }

  /** Whether a stone stands in a head with a key. */
  public boolean keyed(Piece piece) {
    String stone = "-" + piece.stone().mark();
    return work.heads().stream()
        .filter(h -> piece.mark().startsWith(h.layout().opening().mark()))
        .filter(h -> piece.mark().equals(h.layout().opening().mark() + stone))
        .anyMatch(h -> h.layout().stones().stream().anyMatch(s -> s.role() == Role.KEY));
  }

  /**
   * A word for the label of a page, in the first language: viewers show it where room is scarce.
   */
  public String label(String key) {
    return words.singly().get(0).say(key);
  }

  /** A blank page; off a roll, one half as long again as the roll is wide. */
  public PageDraft page(Turn turn, String label, String title) {
    double w = paper().width().mm();
    double h = paper().roll() ? w * ROLL_PAGE : paper().height().mm();
    boolean wide = turn == Turn.LANDSCAPE;
    double pw = wide ? h : w;
    double ph = wide ? w : h;
    return page(pw, ph, label, title);
  }

  /** A sheet's first page, which may begin where the sheet before it ends. */
  public PageDraft first(Turn turn, String label, String title) {
    PageDraft page = page(turn, label, title);
    Box a = page.area();
    // A page that is turned the other way may be lower than that; it can't be shared anyway.
    return begins <= a.minY() || begins >= a.maxY()
        ? page
        : new PageDraft(
            page.width(),
            page.height(),
            new Box(a.minX(), begins, a.maxX(), a.maxY()),
            label,
            title);
  }

  /** A blank page of a size, for paper off a roll; mm. */
  public PageDraft page(double pw, double ph, String label, String title) {
    return new PageDraft(pw, ph, frame.area(pw, ph), label, title);
  }

  /** The room for drawing on a page turned so. */
  public Box area(Turn turn) {
    return page(turn, "", "").area();
  }

  /** Upright, but where a frame of the user's own makes that narrow and the other way is wider. */
  public Turn upright() {
    double width = area(Turn.PORTRAIT).width();
    return width < NARROW && area(Turn.LANDSCAPE).width() > width ? Turn.LANDSCAPE : Turn.PORTRAIT;
  }

  /** How a page is turned. */
  public enum Turn {
    /** Upright. */
    PORTRAIT,
    /** On its side. */
    LANDSCAPE
  }
}

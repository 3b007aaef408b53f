package headcourse.sheet.picture;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.job.Job;
import headcourse.sheet.Scale;
import headcourse.text.Words;
import headcourse.work.ShopWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every opening of a job in its wall, all at one scale, in rows that stand on one level; on more
 * than one page where there are more than four to a page.
 */
public final class Pictures {
  private static final double GAP = 7;
  private static final int EACH = 4;

  /** Wall shown beside a head, mm: rather less of it than a smaller scale. */
  private static final double[] BESIDE = {320, 200, 100};

  private final Scale scale;
  private final boolean fits;
  private final List<List<Row>> pages;

  private record Row(List<OpeningPicture> pictures) {
    Row with(OpeningPicture next) {
      List<OpeningPicture> all = new ArrayList<>(pictures);
      all.set(all.size() - 1, all.get(all.size() - 1).before(next));
      all.add(next);
      return new Row(all);
    }

    double width() {
      return pictures.stream().mapToDouble(p -> p.width() + GAP).sum() - GAP;
    }

    double stand() {
      return pictures.stream().mapToDouble(OpeningPicture::stand).max().orElseThrow();
    }

    double height() {
      double below = pictures.stream().mapToDouble(p -> p.height() - p.stand()).max().orElseThrow();
      return stand() + below;
    }
  }

  private Pictures(Scale scale, boolean fits, List<List<Row>> pages) {
    this.scale = scale;
    this.fits = fits;
    this.pages = pages;
  }

  /**
   * A head to be seen in its wall.
   *
   * @param job its job
   * @param head the head
   * @param letter that of a choice, or empty
   */
  public record Seen(Job job, HeadWork head, String letter) {}

  /** All at the largest scale at which they take no more pages of so much room than they may. */
  public static Pictures of(ShopWork work, Words words, double width, double height) {
    List<Seen> heads = work.heads().stream().map(h -> new Seen(work.job(), h, "")).toList();
    return of(heads, words, width, height);
  }

  /**
   * The same of heads of more than one job; all of these have one kind of units.
   *
   * @param heads at least one
   */
  public static Pictures of(List<Seen> heads, Words words, double width, double height) {
    int most = (heads.size() + EACH - 1) / EACH;
    Optional<Pictures> last = Optional.empty();
    for (Scale s : Scale.ladder(heads.get(0).job().units())) {
      for (double beside : BESIDE) {
        List<OpeningPicture> all = new ArrayList<>();
        for (Seen head : heads) {
          all.add(new OpeningPicture(head, words, s, beside));
        }
        boolean fits = all.stream().allMatch(o -> o.width() <= width && o.height() <= height);
        Pictures p = new Pictures(s, fits, pages(all, width, height));
        if (fits && p.pages.size() <= most) {
          return p;
        }
        last = Optional.of(p);
      }
    }
    return last.orElseThrow();
  }

  private static List<List<Row>> pages(List<OpeningPicture> all, double width, double height) {
    List<Row> rows = new ArrayList<>();
    for (OpeningPicture p : all) {
      Row longer = rows.isEmpty() ? null : rows.get(rows.size() - 1).with(p);
      if (longer != null && longer.width() <= width) {
        rows.set(rows.size() - 1, longer);
      } else {
        rows.add(new Row(List.of(p)));
      }
    }
    List<List<Row>> pages = new ArrayList<>();
    double left = -1;
    for (Row r : rows) {
      if (r.height() > left) {
        pages.add(new ArrayList<>());
        left = height;
      }
      pages.get(pages.size() - 1).add(r);
      left -= r.height() + GAP / 2;
    }
    return pages;
  }

  /** Whether each has room on its page. */
  public boolean fits() {
    return fits;
  }

  /** The scale. */
  public Scale scale() {
    return scale;
  }

  /** How many pages they take. */
  public int pages() {
    return pages.size();
  }

  /** How wide a page of them is, mm. */
  public double width(int page) {
    return pages.get(page).stream().mapToDouble(Row::width).max().orElseThrow();
  }

  /** How high a page of them is, mm. */
  public double height(int page) {
    return pages.get(page).stream().mapToDouble(r -> r.height() + GAP / 2).sum() - GAP / 2;
  }

  /** Draws a page of them with its upper left corner at a place. */
  public void draw(Board board, int page, double x, double top) {
    double y = top;
    for (Row row : pages.get(page)) {
      double at = x;
      for (OpeningPicture p : row.pictures) {
        p.draw(board, at, y + row.stand() - p.stand());
        at += p.width() + GAP;
      }
      y += row.height() + GAP / 2;
    }
  }
}

package headcourse.sheet.picture;

import headcourse.bench.HeadWork;
import headcourse.drawing.Board;
import headcourse.drawing.Dimensions;
import headcourse.drawing.LabelShape;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.drawing.TextFlow;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.BreakLine;
import headcourse.sheet.Scale;
import headcourse.sheet.picture.Pictures.Seen;
import headcourse.text.Words;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One opening in its wall, for people who read no shop drawings: the stones, the whole opening, the
 * wall's courses where the job gives them, floor and ground, and the few sizes that they ask for.
 */
final class OpeningPicture {
  private static final Lettering NAME = new Lettering(5, true);
  private static final Lettering SMALLER = new Lettering(3.5, true);
  private static final Lettering NOTE = Lettering.NOTE;
  private static final Lettering SIZE = new Lettering(3.5, true);

  /** From the wall to the chain of heights at its left, and beyond that, mm. */
  private static final double CHAIN = 8;

  private static final double AIR = 5;

  /** Paper under the lowest line for hatching and the width, mm. */
  private static final double BELOW = 15;

  private static final double HATCH = 3;

  private final Seen seen;
  private final Job job;
  private final Words words;
  private final LengthFormat format;
  private final HeadWork head;
  private final Scale scale;
  private final double beside;
  private final boolean named;
  private final OpeningView view;
  private final double f;
  private final Lettering lettering;
  private final List<String> name;
  private final List<String> notes;
  private final double left;
  private final double right;
  private final double width;

  OpeningPicture(Seen seen, Words words, Scale scale, double beside) {
    this(seen, words, scale, beside, true);
  }

  private OpeningPicture(Seen seen, Words words, Scale scale, double beside, boolean named) {
    this.seen = seen;
    this.scale = scale;
    this.beside = beside;
    this.named = named;
    this.job = seen.job();
    this.words = words;
    this.format = new LengthFormat(job.units(), job.grid());
    this.head = seen.head();
    this.view = new OpeningView(job, head, beside);
    this.f = scale.factor();
    this.left = left();
    this.right =
        3 + levels().stream().mapToDouble(l -> LabelShape.width(l.name, NOTE)).max().orElse(0);
    double wall = (view.edge(Side.RIGHT) - view.edge(Side.LEFT)) * f;
    this.width = left + wall + right + 2;
    Opening o = view.opening();
    String first = seen.letter().isEmpty() ? o.mark() : seen.letter() + " · " + o.mark();
    String title = o.label().isEmpty() ? first : first + " · " + o.label();
    String times = o.count() > 1 ? "  × " + o.count() : "";
    boolean large = TextFlow.lines(title + times, width, NAME).size() == 1;
    this.lettering = large ? NAME : SMALLER;
    this.name = TextFlow.lines(title + times, width, lettering);
    this.notes = notes();
  }

  // A height too short for its figure has it lying beside the chain.
  private double left() {
    double beside = 5;
    List<Double> chain = chain();
    for (int i = 0; i + 1 < chain.size(); i++) {
      double high = chain.get(i + 1) - chain.get(i);
      String text = text(Length.mm(high));
      if (!Dimensions.fits(text, SIZE, high * f)) {
        beside = Math.max(beside, LabelShape.width(text, SIZE) + 2);
      }
    }
    return CHAIN + beside + AIR;
  }

  private List<String> notes() {
    List<String> all = new ArrayList<>();
    if (!view.heightKnown()) {
      all.addAll(TextFlow.lines(words.say("picture.no-height"), width, NOTE));
    } else if (view.floor().sill() == null) {
      all.addAll(TextFlow.lines(words.say("picture.no-floor"), width, NOTE));
    } else if (view.floor().ground() == null) {
      all.addAll(TextFlow.lines(words.say("picture.no-ground"), width, NOTE));
    }
    return all;
  }

  /** A level that is named beside the wall. */
  private record Level(double y, String name) {}

  private List<Level> levels() {
    List<Level> all = new ArrayList<>();
    if (!named) {
      return all;
    }
    if (view.floorKnown()) {
      boolean one = Math.abs(view.groundLevel() - view.floorLevel()) < 1;
      boolean ground = view.floor().ground() != null;
      String both = words.say(ground ? "picture.floor-and-ground" : "picture.floor");
      all.add(new Level(view.floorLevel(), one ? both : words.say("picture.floor")));
      if (!one) {
        all.add(new Level(view.groundLevel(), words.say("picture.ground")));
      }
    }
    return all;
  }

  /** The same beside another that names floor and ground for both, if it does. */
  OpeningPicture before(OpeningPicture next) {
    boolean alike =
        next.view.floorKnown() == view.floorKnown()
            && Objects.equals(next.view.floor().ground(), view.floor().ground());
    return alike ? new OpeningPicture(seen, words, scale, beside, false) : this;
  }

  /** How wide it is on paper, mm. */
  double width() {
    return width;
  }

  private double words() {
    return name.size() * lettering.height() * TextFlow.LEADING
        + notes.size() * NOTE.height() * TextFlow.LEADING
        + 2;
  }

  /** From its upper edge to the lowest line, mm: pictures of one row stand on one level. */
  double stand() {
    return words() + (view.high() - view.low()) * f;
  }

  /** How high it is on paper, mm. */
  double height() {
    return stand() + BELOW;
  }

  /** Draws it with its upper left corner at a place. */
  void draw(Board board, double x, double top) {
    String title = words.say("picture.of", view.opening().mark(), view.opening().label());
    double y = TextFlow.paragraph(board, x, top, name, lettering);
    TextFlow.paragraph(board, x, y - 1, notes, NOTE);
    Point origin = new Point(x + left - view.edge(Side.LEFT) * f, top + words() + view.high() * f);
    Similarity paper = Similarity.toPaper(f, origin);
    board.group(Role.FIGURE, "", title, b -> figure(b, paper));
  }

  private void figure(Board b, Similarity paper) {
    b.group(Role.WALL, "", "", w -> wall(w, paper));
    for (int pass = 0; pass < 2; pass++) {
      for (PlacedStone s : view.layout().stones()) {
        boolean key = s.role() == headcourse.layout.Role.KEY;
        if (key == (pass == 1)) {
          String own = head.piece(s.mark()).mark();
          String mark = seen.letter().isEmpty() ? own : seen.letter() + "-" + own;
          Path outline = s.outline().transformed(paper);
          b.group(Role.STONE, mark, mark, g -> g.outline(outline, Shade.WHITE, Pen.CUT));
        }
      }
    }
    b.group(Role.LINES, "", "", l -> grounds(l, paper));
    b.group(Role.DIMENSIONS, "", "", d -> sizes(d, paper));
  }

  private void wall(Board b, Similarity paper) {
    for (Point[] part : view.courses()) {
      b.line(paper.apply(part[0]), paper.apply(part[1]), Pen.FINE);
    }
    b.fill(view.hole().transformed(paper), Shade.KEY);
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      double jamb = view.jamb(side);
      b.line(at(paper, jamb, 0), at(paper, jamb, view.foot()), Pen.CUT);
      Point low = at(paper, view.edge(side), view.low());
      Point high = at(paper, view.edge(side), view.high());
      if (view.ends(side)) {
        b.line(low, high, Pen.CUT);
      } else {
        BreakLine.draw(b, low, high);
      }
    }
    if (view.heightKnown()) {
      b.line(
          at(paper, view.jamb(Side.LEFT), view.foot()),
          at(paper, view.jamb(Side.RIGHT), view.foot()),
          Pen.EDGE);
    }
    BreakLine.draw(
        b,
        at(paper, view.edge(Side.LEFT), view.high()),
        at(paper, view.edge(Side.RIGHT), view.high()));
    if (!view.floorKnown()) {
      BreakLine.draw(
          b,
          at(paper, view.edge(Side.LEFT), view.low()),
          at(paper, view.edge(Side.RIGHT), view.low()));
    }
  }

  private static Point at(Similarity paper, double x, double y) {
    return paper.apply(new Point(x, y));
  }

  private void grounds(Board b, Similarity paper) {
    if (!view.floorKnown()) {
      return;
    }
    double left = at(paper, view.edge(Side.LEFT), 0).x();
    double edge = at(paper, view.edge(Side.RIGHT), 0).x();
    double floor = at(paper, 0, view.floorLevel()).y();
    double ground = at(paper, 0, view.groundLevel()).y();
    if (Math.abs(floor - ground) > 0.01) {
      b.line(left, floor, edge + 2, floor, Pen.HIDDEN);
    }
    b.line(left - 3, ground, edge + 2, ground, Pen.OUTLINE);
    for (double x = left; x < edge + 2; x += 5) {
      b.line(x, ground, x - HATCH, ground + HATCH, Pen.FINE);
    }
    double before = Double.NEGATIVE_INFINITY;
    for (Level l : levels().stream().sorted((p, q) -> Double.compare(q.y, p.y)).toList()) {
      double y = Math.max(at(paper, 0, l.y).y() + 1.2, before + 4);
      b.text(edge + 3, y, l.name, NOTE, Align.START);
      before = y;
    }
  }

  /** The levels that heights are given between, from below. */
  private List<Double> chain() {
    List<Double> levels = new ArrayList<>();
    if (view.floorKnown() && view.floor().ground() != null) {
      levels.add(view.groundLevel());
    }
    if (view.floorKnown()) {
      levels.add(view.floorLevel());
    }
    if (view.heightKnown()) {
      levels.add(view.foot());
    }
    levels.addAll(List.of(0.0, view.crown(), view.top()));
    List<Double> chain = new ArrayList<>();
    for (double level : levels.stream().sorted().toList()) {
      if (chain.isEmpty() || level - chain.get(chain.size() - 1) > 0.5) {
        chain.add(level);
      }
    }
    return chain;
  }

  // Heights in a chain at the left, each between the lines that it is measured from.
  private void sizes(Board b, Similarity paper) {
    double x = at(paper, view.edge(Side.LEFT), 0).x() - 1;
    List<Double> chain = chain();
    List<Dimensions.Size> sizes = new ArrayList<>();
    List<Dimensions.Size> small = new ArrayList<>();
    for (int i = 0; i + 1 < chain.size(); i++) {
      double low = chain.get(i);
      double high = chain.get(i + 1);
      Point from = new Point(x, at(paper, 0, low).y());
      Point to = new Point(x, at(paper, 0, high).y());
      String text = text(Length.mm(high - low));
      boolean fits = Dimensions.fits(text, SIZE, from.distance(to));
      (fits ? sizes : small).add(new Dimensions.Size(from, to, CHAIN - 1, text, SIZE));
    }
    double under = at(paper, 0, view.low()).y() + HATCH;
    Point left = new Point(at(paper, view.jamb(Side.LEFT), 0).x(), under);
    Point jamb = new Point(at(paper, view.jamb(Side.RIGHT), 0).x(), under);
    Length wide = view.layout().jamb(Side.LEFT).plus(view.layout().jamb(Side.RIGHT));
    sizes.add(new Dimensions.Size(left, jamb, -7, text(wide), SIZE));
    new Dimensions(b).all(sizes);
    // Past the end of its line a figure would run together with the next one.
    for (Dimensions.Size s : small) {
      double middle = (s.a().y() + s.b().y()) / 2;
      new Dimensions(b, new Box(x - CHAIN - 40, middle - 4, x, middle + 4)).all(List.of(s));
    }
  }

  private String text(Length length) {
    return format.building(job.grid().snap(length));
  }
}

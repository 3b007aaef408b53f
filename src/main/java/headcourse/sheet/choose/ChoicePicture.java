package headcourse.sheet.choose;

import headcourse.choose.Choice;
import headcourse.drawing.Board;
import headcourse.drawing.Mark.Role;
import headcourse.drawing.Pen;
import headcourse.drawing.Shade;
import headcourse.geom.Box;
import headcourse.geom.Path;
import headcourse.geom.Point;
import headcourse.geom.Similarity;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.sheet.Scale;

/** A small picture of a head over its opening, seen from outside, to scale. */
final class ChoicePicture {
  /** How much of the jambs is shown below the soffit line, mm on paper. */
  private static final double JAMBS = 2.5;

  private final Choice choice;
  private final Box box;
  private final double factor;

  ChoicePicture(Choice choice, Scale scale) {
    this.choice = choice;
    this.box = around(choice.head());
    this.factor = scale.factor();
  }

  /** The least box around all stones and both jamb lines, model space. */
  static Box around(HeadLayout head) {
    double foot = 0;
    Box box = Box.of(-head.jamb(Side.LEFT).mm(), foot, head.halfWidth().mm() * 2, 1);
    for (PlacedStone s : head.stones()) {
      box = box.union(s.outline().bounds());
    }
    return box;
  }

  double height() {
    return (box.maxY() - Math.min(0, box.minY())) * factor + JAMBS;
  }

  /** Draws it with its upper left corner at a place. */
  void draw(Board board, double x, double y) {
    Point origin = new Point(x - box.minX() * factor, y + box.maxY() * factor);
    Similarity map = Similarity.toPaper(factor, origin);
    HeadLayout head = choice.head();
    board.group(
        Role.WALL,
        "",
        "",
        b -> {
          double low = y + height();
          for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
            double jamb = origin.x() + side.sign() * head.jamb(side).mm() * factor;
            b.line(jamb, origin.y(), jamb, low, Pen.DIMENSION);
          }
        });
    for (PlacedStone s : head.stones()) {
      Path outline = s.outline().transformed(map);
      boolean key = s.role() == headcourse.layout.Role.KEY;
      board.group(
          Role.STONE,
          choice.letter() + "-" + s.mark(),
          choice.letter() + " " + s.mark(),
          b -> b.outline(outline, key ? Shade.KEY : Shade.STONE, Pen.DIMENSION));
    }
  }
}

package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Board;
import headcourse.drawing.Mark;
import headcourse.geom.Point;
import headcourse.job.Opening;
import headcourse.layout.Role;
import headcourse.layout.Side;
import headcourse.sheet.Marks;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetContext;
import headcourse.sheet.section.AnchorSample;
import headcourse.sheet.section.ScrewSection;
import headcourse.sheet.section.SectionFigure;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The sections of a set, with the letters that they go by, and where each is cut. */
final class Cuts {
  private final SheetContext context;
  private final List<Cut> all = new ArrayList<>();

  private Cuts(SheetContext context) {
    this.context = context;
  }

  /**
   * A section.
   *
   * @param letter what it goes by
   * @param figure how it is drawn
   * @param level whether it is cut level, and seen from above
   * @param places where it is cut, by the marks of the openings that it stands for; model space
   */
  record Cut(String letter, SectionFigure figure, boolean level, Map<String, Point> places) {
    /** What it is found by in the set. */
    String anchor() {
      return "section-" + letter;
    }
  }

  /** All sections, each drawn once for all that it stands for. */
  static List<Cut> of(SheetContext context) {
    Cuts cuts = new Cuts(context);
    cuts.heads();
    cuts.soffits();
    cuts.jambs();
    cuts.screws();
    return cuts.all;
  }

  private void add(SectionFigure figure, boolean level, Map<String, Point> places) {
    int n = all.size();
    String letter = Character.toString((char) ('A' + n % 26)).repeat(1 + n / 26);
    all.add(new Cut(letter, figure, level, places));
  }

  private static String mark(HeadWork head) {
    return head.layout().opening().mark();
  }

  // Heads are alike in section where what is drawn of them is.
  private void heads() {
    Map<List<Mark>, List<HeadWork>> kinds = new LinkedHashMap<>();
    for (HeadWork head : context.work().heads()) {
      HeadSection s = new HeadSection(context.of(head), head, false);
      Board board = new Board();
      s.draw(board, s.place(Scale.FULL, 0, 0, s.trueWidth() + 120));
      kinds.computeIfAbsent(board.marks(), k -> new ArrayList<>()).add(head);
    }
    for (List<HeadWork> heads : kinds.values()) {
      HeadWork one = heads.get(0);
      HeadSection s = new HeadSection(context.of(one), one);
      String marks = String.join(", ", heads.stream().map(Cuts::mark).toList());
      Map<String, Point> places = new LinkedHashMap<>();
      heads.forEach(h -> places.put(mark(h), top(plain(h))));
      add(
          new SectionFigure(
              context.say("contractor.section-head", marks),
              s.trueWidth(),
              s.trueHeight(),
              HeadSection.margins(),
              230,
              s::place,
              s::draw),
          false,
          places);
    }
  }

  // An ordinary stone of the left side; of a head without one its only stone.
  private static Piece plain(HeadWork head) {
    return head.pieces().stream()
        .filter(p -> p.stone().role() == Role.STONE && p.stone().side() == Side.LEFT)
        .reduce((first, second) -> second)
        .orElse(head.pieces().get(head.pieces().size() / 2));
  }

  private static Point top(Piece p) {
    var box = p.stone().outline().bounds();
    return new Point(box.centre().x(), box.maxY());
  }

  private void soffits() {
    Set<SoffitPiece.Joint> joints = EnumSet.noneOf(SoffitPiece.Joint.class);
    for (HeadWork head : context.work().heads()) {
      for (Piece p : head.pieces()) {
        // An ordinary stone shows it best: one with a screw in its end.
        if (p.soffitPieces().isEmpty()
            || p.stone().role() == Role.END
            || !joints.add(p.soffitPieces().get(0).joint())) {
          continue;
        }
        SheetContext its = context.of(head);
        SoffitSection s = new SoffitSection(its, p);
        String joint = p.soffitPieces().get(0).joint().word();
        String name = its.say("contractor.section-soffit-" + joint);
        add(
            new SectionFigure(name, s.trueWidth(), s.trueHeight(), 26, 120, s::place, s::draw),
            false,
            Map.of(mark(head), top(p)));
      }
    }
  }

  private void jambs() {
    List<Length> reveals =
        context.job().openings().stream().map(Opening::reveal).distinct().toList();
    for (Length reveal : reveals) {
      JambSection j = new JambSection(context, reveal);
      String name = context.say("contractor.section-jamb");
      Map<String, Point> places = new LinkedHashMap<>();
      for (HeadWork h : context.work().heads()) {
        if (h.layout().opening().reveal().equals(reveal)) {
          places.put(mark(h), new Point(h.layout().jamb(Side.RIGHT).mm(), 0));
        }
      }
      add(
          new SectionFigure(name, j.trueWidth(), j.trueHeight(), 14, 120, j::place, j::draw),
          true,
          places);
    }
  }

  private void screws() {
    for (AnchorSample a : AnchorSample.of(context.work().heads())) {
      if (a.notch().screw() == null) {
        continue;
      }
      ScrewSection s = new ScrewSection(context, a.piece(), a.notch());
      String name = context.say("contractor.section-screw", Marks.of(a.pieces(), true));
      Map<String, Point> places = new LinkedHashMap<>();
      Set<String> held = a.pieces().stream().map(Piece::mark).collect(Collectors.toSet());
      for (HeadWork h : context.work().heads()) {
        h.pieces().stream()
            .filter(p -> held.contains(p.mark()))
            .filter(p -> !p.notches().isEmpty())
            .findFirst()
            .ifPresent(p -> places.put(mark(h), p.notches().get(0).at()));
      }
      add(SectionFigure.of(name, s, 75), true, places);
    }
  }
}

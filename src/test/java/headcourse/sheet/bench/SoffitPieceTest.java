package headcourse.sheet.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import headcourse.bench.Piece;
import headcourse.bench.SoffitNotch;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.export.CutListCsv;
import headcourse.job.Accepted;
import headcourse.job.Backing;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.rules.Finding;
import headcourse.sheet.book.SheetBook;
import headcourse.sheet.frame.Frame;
import headcourse.testing.JobMaker;
import headcourse.testing.Tape;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import headcourse.units.Units;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Soffit pieces of a 96 in door with soldiers 8 in wide, stone 1¼ in, bed, scratch and sheathing ½
 * in each: what is worked out by hand stands on the finished sheets.
 */
class SoffitPieceTest {
  private static final double IN = 25.4;

  private static JobMaker maker(HeadSpec.Soffit soffit, double reveal) {
    JobMaker m = JobMaker.one();
    m.first().soffit = soffit;
    m.first().reveal = Length.inches(reveal);
    return m;
  }

  private static ShopWork work(JobMaker m) {
    return WorkUp.of(m.make()).value().orElseThrow();
  }

  private static SoffitPiece of(ShopWork work, String mark) {
    Piece p = work.heads().get(0).piece(mark);
    assertEquals(1, p.soffitPieces().size(), mark);
    return p.soffitPieces().get(0);
  }

  private static String sheets(ShopWork work, Bundle bundle) {
    List<String> labels = new ArrayList<>();
    for (Page page : SheetBook.compose(work, bundle, Frame.plain()).pages()) {
      collect(page.marks(), labels);
    }
    return String.join(" ", labels);
  }

  private static void collect(List<Mark> marks, List<String> labels) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Group g) {
        collect(g.marks(), labels);
      } else if (mark instanceof Mark.Label l) {
        labels.add(Tape.raised(l.text()));
      }
    }
  }

  private static String tape(double inches) {
    return new LengthFormat(Units.INCH, new Grid(Length.inches(1 / 16.0)))
        .withUnit(Length.inches(inches));
  }

  private static List<Finding> loose(ShopWork work) {
    return work.findings().stream().filter(f -> f.rule().equals("soffit-hold")).toList();
  }

  /**
   * Reveal 7½ in. Mitred: 8 × 7½ in, 8 · 1¼ · (7½ − ⅝) = 68.75 in³. What carries stands 2¾ to 6¼ in
   * behind the face and the piece ends at 7½: the slot in its middle is 3 in from the back.
   */
  @Test
  void mitredByHand() {
    JobMaker m = maker(HeadSpec.Soffit.MITRED, 7.5);
    ShopWork work = work(m);
    SoffitPiece s = of(work, "R2");
    assertEquals("D1-R2-S", s.mark());
    assertEquals(8, s.underside().mm() / IN, 1e-6);
    assertEquals(7.5, s.depth().mm() / IN, 1e-9);
    assertEquals(68.75, s.volumeM3() / Math.pow(0.0254, 3), 1e-6);
    SoffitNotch n = s.notches().get(0);
    assertEquals(1, s.notches().size());
    assertEquals(SoffitNotch.Edge.RIGHT, n.edge());
    assertEquals(SoffitNotch.Edge.LEFT, of(work, "L2").notches().get(0).edge());
    assertEquals(3.0, n.place().mm() / IN, 1e-9);
    reaches(n);
    String bench = sheets(work, Bundle.BENCH);
    assertTrue(bench.contains("soffit piece " + tape(8) + " × " + tape(7.5)));
    assertTrue(bench.contains("SOFFIT PIECE D1-R1-S from above"), "R1 and R2 share it");
    assertTrue(bench.contains("slot in the right end, 3\" from the back"));
    assertTrue(bench.contains("slot in the left end, 3\" from the back"));
    assertTrue(bench.contains("slot in both ends, 3\" from the back"), "the key's");
    assertTrue(bench.contains("two stainless pins and epoxy at the bench, to be confirmed"));
    assertTrue(bench.contains("mitred 45° to the face"));
    assertTrue(bench.contains("prop for a day, clear of the slot"));
    String contractor = sheets(work, Bundle.CONTRACTOR);
    assertTrue(contractor.contains("Soffit piece mitred to its face"), contractor);
    assertTrue(contractor.contains("Soffit piece " + tape(7.5) + " deep"));
    String wall = sheets(work, Bundle.WALL);
    assertTrue(wall.contains("screw up, right end"), wall);
    assertTrue(wall.contains("screw up, left end"));
    assertTrue(loose(work).isEmpty());
    assertTrue(
        CutListCsv.write(work).replace("\"", "").contains("D1-R2-S 8 x 7 1/2 x 1 1/4,right "));
  }

  /** (L − c) sin α less the bed stands in what holds, square to the underside. */
  private static void reaches(SoffitNotch n) {
    double a = n.mouth().mm();
    double e = n.run().mm();
    double c = Math.sqrt(a * a + e * e);
    double reach = (n.anchor().screw().mm() - c) * a / c - 0.5 * IN;
    assertEquals(reach, n.anchor().penetration().mm(), 1e-4);
    assertTrue(reach >= IN, "the job's embedment");
    assertEquals(Backing.Kind.WOOD, n.anchor().holdsIn());
  }

  /** Butted: 7½ − 1¼ = 6¼ in deep; 8 · 1¼ · 6¼ = 62.5 in³. */
  @Test
  void buttedByHand() {
    ShopWork work = work(maker(HeadSpec.Soffit.BUTTED, 7.5));
    SoffitPiece s = of(work, "L2");
    assertEquals(6.25, s.depth().mm() / IN, 1e-9);
    assertEquals(62.5, s.volumeM3() / Math.pow(0.0254, 3), 1e-6);
    assertEquals(3.0, s.notches().get(0).place().mm() / IN, 1e-9);
    String bench = sheets(work, Bundle.BENCH);
    assertTrue(bench.contains("soffit piece " + tape(8) + " × " + tape(6.25)));
    assertTrue(bench.contains("butts the back of the face"));
    assertFalse(bench.contains("mitred 45° to the face"));
    assertTrue(sheets(work, Bundle.CONTRACTOR).contains("Soffit piece " + tape(6.25) + " deep"));
  }

  /** In a dry head an end piece is closed on its inner end and lies on the jamb with the other. */
  @Test
  void endPieceIsHeldAtItsBack() {
    ShopWork work = work(maker(HeadSpec.Soffit.MITRED, 7.5));
    Piece end = work.heads().get(0).pieces().get(0);
    SoffitPiece s = end.soffitPieces().get(0);
    assertTrue(s.seated());
    assertEquals(end.stone().bottom().minus(end.leg().relief()).mm(), s.underside().mm(), 1e-4);
    assertEquals(SoffitNotch.Edge.BACK, s.notches().get(0).edge());
    assertTrue(s.held());
    String bench = sheets(work, Bundle.BENCH);
    assertTrue(bench.contains("slot in the back edge"));
    assertTrue(bench.contains("short of the stone, which lies on"));
  }

  /** Reveal 4 in: only 1¼ in of the piece lies under what carries; a screw wants ¾ in each side. */
  @Test
  void tooShallowIsAnErrorThatCanBeAccepted() {
    JobMaker m = maker(HeadSpec.Soffit.MITRED, 4);
    ShopWork work = work(m);
    int pieces =
        (int)
            work.heads().get(0).pieces().stream().filter(p -> !p.soffitPieces().isEmpty()).count();
    assertEquals(pieces, loose(work).size());
    assertTrue(loose(work).stream().allMatch(f -> f.accepted() == null));
    assertTrue(sheets(work, Bundle.BENCH).contains("NO SCREW OF ITS OWN"));
    assertTrue(sheets(work, Bundle.WALL).contains("NO SCREW"));
    m.accepted = List.of(new Accepted("accept[0]", "soffit-hold", "", "engineer's wire ties"));
    assertTrue(loose(work(m)).stream().allMatch(f -> "engineer's wire ties".equals(f.accepted())));
  }
}

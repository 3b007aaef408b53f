package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.job.Answers;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.rules.MaterialsTakeOff;
import headcourse.sheet.SheetContext;
import headcourse.sheet.elevation.HeadFigures;
import headcourse.units.Length;
import java.util.List;

/** What a head asks of the work of others: weight on the lintel, screws through its layers. */
record HeadLoads(SheetContext context, HeadWork head) {
  private static final double MM_PER_M = 1000;

  private HeadLayout layout() {
    return head.layout();
  }

  /** Stone and wet mortar of the head alone, spread over its length, kg/m. */
  double kgPerM() {
    double mortar = MaterialsTakeOff.mortarKg(context.job(), head);
    Length over = new HeadFigures(head, context.format()).overallAnywhere();
    return (MaterialsTakeOff.headKg(head) + mortar) / over.mm() * MM_PER_M;
  }

  /** The slots of one opening that a screw goes through. */
  List<Notch> screws() {
    return head.pieces().stream()
        .flatMap(p -> p.notches().stream())
        .filter(n -> n.screw() != null)
        .toList();
  }

  /** How many of them go through a flashing. */
  int through(Answers.Flashing flashing) {
    return (int)
        screws().stream()
            .filter(n -> n.at().y() >= flashing.from().mm())
            .filter(n -> n.at().y() <= flashing.to().mm())
            .count();
  }

  /** How far beyond a jamb the outermost screw goes in, mm; 0 where none does. */
  double beyond() {
    double most = 0;
    for (Notch n : screws()) {
      Side side = n.at().x() < 0 ? Side.LEFT : Side.RIGHT;
      most = Math.max(most, Math.abs(n.at().x()) - layout().jamb(side).mm());
    }
    return most;
  }

  /** By how much a dry flat head closes at its top when its lintel bends so far, mm: 8 h/k. */
  double closes(double bendsMm) {
    double k = layout().opening().width().mm() / bendsMm;
    return 8 * layout().opening().head().height().mm() / k;
  }
}

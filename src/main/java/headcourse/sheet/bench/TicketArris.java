package headcourse.sheet.bench;

import headcourse.bench.Piece;
import headcourse.drawing.Board;
import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.layout.ArrisLimit;
import headcourse.layout.ChordOffsets;
import headcourse.sheet.SheetContext;
import headcourse.units.Length;
import headcourse.units.LengthFormat;

/** What a ticket says of a straight arris under a curved soffit. */
record TicketArris(SheetContext c, Piece piece, TicketType type) {
  /** Writes the offsets of its soffit, if it has any; returns how far down they reach. */
  double offsets(Board b, double x, double top, double w) {
    double y = top;
    for (ChordOffsets o : ChordOffsets.of(piece.stone())) {
      if (o.greatest() * 2 >= c.job().grid().tick().mm()) {
        y = type.paragraph(b, x, y, w, chord(o), type.note());
      }
    }
    return y;
  }

  /** What is to be done to it; empty where it stays straight. */
  String told() {
    Length off = Length.mm(piece.stone().arrisDeviation());
    HeadSpec spec =
        c.job().openings().stream()
            .filter(o -> piece.mark().startsWith(o.mark() + "-"))
            .map(Opening::head)
            .findFirst()
            .orElseThrow();
    String stands = c.format().withUnit(c.format().grid().snap(off));
    if (ArrisLimit.worked(spec)) {
      boolean some = off.mm() * 2 >= c.job().grid().tick().mm();
      return some ? c.say("ticket.arris-worked", stands) : "";
    }
    Length most = ArrisLimit.of(c.job(), spec);
    return off.mm() > most.mm() + 1e-9
        ? c.say("ticket.arris-over", stands, c.format().withUnit(most))
        : "";
  }

  private String chord(ChordOffsets o) {
    LengthFormat f = c.format();
    return c.say(
        "ticket.chord",
        f.withUnit(Length.mm(o.chord())),
        f.tape(Length.mm(o.quarter())),
        f.tape(Length.mm(o.half())),
        f.tape(Length.mm(o.threeQuarters())));
  }
}

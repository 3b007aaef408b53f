package headcourse.sheet.wall;

import headcourse.bench.Anchor;
import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.sheet.Holds;
import headcourse.sheet.Marks;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.sheet.section.AnchorSample;
import headcourse.sheet.section.ScrewSection;
import headcourse.sheet.section.SectionFigure;
import headcourse.text.Words;
import java.util.ArrayList;
import java.util.List;

/** What every screw of a head ends in: in words, and the first of them in a cut. */
final class AnchorList {
  private static final double TALLEST = 62;

  private AnchorList() {}

  static void put(SheetFlow flow, SheetContext context, HeadWork head, Lettering text) {
    List<AnchorSample> samples = AnchorSample.of(List.of(head));
    if (samples.isEmpty()) {
      return;
    }
    flow.heading(context.say("wall.holds"), 24);
    List<List<String>> rows = new ArrayList<>();
    for (AnchorSample s : samples) {
      Anchor a = s.notch().anchor();
      boolean none = a.screw() == null;
      rows.add(
          List.of(
              Marks.of(s.pieces(), false),
              none ? context.say("wall.holds-none") : context.say(w -> Holds.screw(context, w, a)),
              context.say((Words w) -> none ? Holds.none(w, a) : Holds.hold(context, w, a))));
    }
    flow.table(
        List.of(
            new Column(context.say("wall.holds-stones"), 50, Align.START, true),
            new Column(context.say("wall.holds-screw"), 50, Align.START, false),
            new Column(context.say("wall.holds-in"), 80, Align.START, true)),
        rows,
        text);
    flow.say("wall.holds-text", text);
    samples.stream()
        .filter(s -> s.notch().screw() != null)
        .findFirst()
        .ifPresent(
            s -> {
              ScrewSection cut = new ScrewSection(context, s.piece(), s.notch());
              String name = context.say("wall.holds-cut", Marks.of(s.pieces(), false));
              SectionFigure.of(name, cut, TALLEST).put(flow, context);
            });
  }
}

package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.sheet.Marks;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.section.AnchorSample;
import headcourse.sheet.section.ScrewSection;
import headcourse.sheet.section.SectionFigure;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sections through head and jamb, drawn from the job's own build-up. */
public final class SectionSheet implements SheetComposer {
  /** The sections of a contractor's set. */
  public SectionSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    String title = context.say("contractor.sections");
    SheetFlow flow = new SheetFlow(context, SheetFlow.bestTurn(context), "S1", title, "");
    flow.page().bookmark(1, title, "sections", flow.page().area().minY());
    Map<List<Object>, List<HeadWork>> kinds = new LinkedHashMap<>();
    for (HeadWork head : context.work().heads()) {
      Opening o = head.layout().opening();
      HeadSpec.Key key = o.head().key();
      // What makes heads look alike in section.
      List<Object> kind =
          new ArrayList<>(List.of(o.head().height(), o.reveal(), o.head().soffit()));
      if (key != null) {
        kind.addAll(Arrays.asList(key.bottom(), key.top(), key.rise(), key.drop(), key.proud()));
      }
      kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(head);
    }
    for (List<HeadWork> heads : kinds.values()) {
      String marks =
          String.join(", ", heads.stream().map(h -> h.layout().opening().mark()).toList());
      HeadSection s = new HeadSection(context.of(heads.get(0)), heads.get(0));
      new SectionFigure(
              context.say("contractor.section-head", marks),
              s.trueWidth(),
              s.trueHeight(),
              HeadSection.margins(),
              230,
              s::place,
              s::draw)
          .put(flow, context);
    }
    Set<SoffitPiece.Joint> joints = EnumSet.noneOf(SoffitPiece.Joint.class);
    for (HeadWork head : context.work().heads()) {
      for (Piece p : head.pieces()) {
        // An ordinary stone shows it best: one with a screw in its end.
        if (p.soffitPieces().isEmpty()
            || p.stone().role() == headcourse.layout.Role.END
            || !joints.add(p.soffitPieces().get(0).joint())) {
          continue;
        }
        SoffitSection s = new SoffitSection(context.of(head), p);
        String name =
            context
                .of(head)
                .say("contractor.section-soffit-" + p.soffitPieces().get(0).joint().word());
        new SectionFigure(name, s.trueWidth(), s.trueHeight(), 26, 120, s::place, s::draw)
            .put(flow, context);
      }
    }
    List<Length> reveals =
        context.job().openings().stream().map(Opening::reveal).distinct().toList();
    for (Length reveal : reveals) {
      JambSection j = new JambSection(context, reveal);
      String name = context.say("contractor.section-jamb");
      new SectionFigure(name, j.trueWidth(), j.trueHeight(), 10, 120, j::place, j::draw)
          .put(flow, context);
    }
    for (AnchorSample a : AnchorSample.of(context.work().heads())) {
      if (a.notch().screw() != null) {
        ScrewSection s = new ScrewSection(context, a.piece(), a.notch());
        String name = context.say("contractor.section-screw", Marks.of(a.pieces(), true));
        SectionFigure.of(name, s, 75).put(flow, context);
      }
    }
    AnchorTable.put(flow, context);
    return flow.pages();
  }
}

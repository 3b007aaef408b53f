package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.Piece;
import headcourse.bench.SoffitPiece;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Role;
import headcourse.job.Bundle;
import headcourse.job.HeadSpec;
import headcourse.job.Opening;
import headcourse.sheet.Board;
import headcourse.sheet.PageDraft;
import headcourse.sheet.Scale;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/** Sections through head and jamb, drawn from the job's own build-up. */
public final class SectionSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);

  /** Least width of the column of names, mm. */
  private static final double NAMES = 62;

  private static final double LEFT = 24;

  /** The sections of a contractor's set. */
  public SectionSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  private interface Placing {
    SectionPlace place(Scale scale, double x, double y, double width);
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
      HeadSection s = new HeadSection(context, heads.get(0));
      put(
          flow,
          context,
          context.say("contractor.section-head", marks),
          s.trueWidth(),
          s.trueHeight(),
          HeadSection.margins(),
          230,
          s::place,
          s::draw);
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
        SoffitSection s = new SoffitSection(context, p);
        String name =
            context.say("contractor.section-soffit-" + p.soffitPieces().get(0).joint().word());
        put(flow, context, name, s.trueWidth(), s.trueHeight(), 26, 120, s::place, s::draw);
      }
    }
    List<Length> reveals =
        context.job().openings().stream().map(Opening::reveal).distinct().toList();
    for (Length reveal : reveals) {
      JambSection j = new JambSection(context, reveal);
      String name = context.say("contractor.section-jamb");
      put(flow, context, name, j.trueWidth(), j.trueHeight(), 10, 120, j::place, j::draw);
    }
    Optional<Notch> notch =
        context.work().heads().stream()
            .flatMap(h -> h.pieces().stream())
            .flatMap(p -> p.notches().stream())
            .filter(n -> n.screw() != null)
            .findFirst();
    if (notch.isPresent()) {
      ScrewSection s = new ScrewSection(context, notch.get());
      String name = context.say("contractor.section-screw");
      put(flow, context, name, s.trueWidth(), s.trueHeight(), 12, 75, s::place, s::draw);
    }
    return flow.pages();
  }

  // The largest scale that leaves room for the names.
  private static void put(
      SheetFlow flow,
      SheetContext context,
      String name,
      double trueWidth,
      double trueHeight,
      double margins,
      double tallest,
      Placing section,
      BiConsumer<Board, SectionPlace> drawing) {
    double words = 24;
    Scale scale =
        Scale.largest(
            context.job().units(),
            trueWidth,
            trueHeight,
            flow.width() - NAMES - LEFT,
            Math.min(flow.tallest() - words, tallest) - margins);
    double height = section.place(scale, 0, 0, flow.width()).bottom();
    flow.heading(name, height + 9);
    flow.paragraph(scale.name(), TEXT);
    flow.figure(
        height + 2,
        (b, x, y) ->
            b.group(
                Role.FIGURE,
                "",
                name,
                f -> drawing.accept(f, section.place(scale, x, y, flow.width()))));
  }
}

package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.job.Measured;
import headcourse.layout.HeadLayout;
import headcourse.layout.PlacedStone;
import headcourse.layout.Side;
import headcourse.layout.StoneChange;
import headcourse.layout.StoneChange.Kind;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was found on the wall, which stones were there, and what changed because of both. */
final class AsBuiltNotes {
  private final SheetContext context;
  private final HeadLayout layout;
  private final LengthFormat format;

  private AsBuiltNotes(SheetContext context, HeadLayout layout) {
    this.context = context;
    this.layout = layout;
    this.format = context.format();
  }

  /** Writes them, where anything was measured or fitted. */
  static void write(SheetFlow flow, SheetContext context, HeadWork head, Lettering text) {
    AsBuiltNotes notes = new AsBuiltNotes(context, head.layout());
    List<String> fitted =
        head.layout().stones().stream().filter(PlacedStone::fitted).map(PlacedStone::mark).toList();
    boolean measured = head.layout().opening().measured() != null;
    boolean spoiled = fitted.isEmpty() && !head.layout().asBuilt().changes().isEmpty();
    if (!measured && !spoiled && fitted.isEmpty()) {
      return;
    }
    flow.heading(context.say("wall.as-built"), 24);
    if (measured) {
      notes.widths(flow, text);
      flow.say("wall.as-built-jambs", text, notes.jamb(Side.LEFT), notes.jamb(Side.RIGHT));
    }
    if (head.bed().measured()) {
      Length lowered = head.bed().lowered();
      String key =
          lowered.isZero()
              ? "wall.as-built-level"
              : lowered.isPositive() ? "wall.as-built-lowered" : "wall.as-built-raised";
      flow.say(key, text, notes.format.withUnit(lowered.abs()));
    }
    if (!fitted.isEmpty()) {
      flow.say("wall.as-built-fitted", text, String.join(", ", fitted));
      notes.changes(flow, text);
    } else if (spoiled) {
      notes.changes(flow, text);
    }
  }

  // As they were measured, each where it was, in each language.
  private void widths(SheetFlow flow, Lettering text) {
    Measured m = layout.opening().measured();
    List<String> said = new ArrayList<>();
    said.add(width("head", m.widthHead()));
    said.add(width("middle", m.widthMiddle()));
    said.add(width("sill", m.widthSill()));
    said.removeIf(String::isEmpty);
    if (!said.isEmpty()) {
      flow.say("wall.as-built-widths", text, String.join("; ", said));
    }
  }

  private String width(String where, Length measured) {
    return measured == null ? "" : context.say("wall.as-built-" + where, format.withUnit(measured));
  }

  private String jamb(Side side) {
    return format.withUnit(layout.jamb(side));
  }

  private void changes(SheetFlow flow, Lettering text) {
    List<StoneChange> all = layout.asBuilt().changes();
    if (all.isEmpty()) {
      flow.say("wall.as-built-unchanged", text);
      return;
    }
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (StoneChange c : all) {
      alike.computeIfAbsent(row(c), r -> new ArrayList<>()).add(c.mark());
    }
    List<List<String>> rows = new ArrayList<>();
    alike.forEach(
        (row, marks) -> {
          List<String> cells = new ArrayList<>(List.of(String.join(", ", marks)));
          cells.addAll(row);
          rows.add(cells);
        });
    if (all.stream().anyMatch(c -> c.kind().ticketChanges())) {
      boolean fitted = layout.stones().stream().anyMatch(PlacedStone::fitted);
      flow.say(fitted ? "wall.changed-text" : "wall.changed-spoiled", text);
    }
    flow.table(
        List.of(
            new Column(context.say("wall.change-stones"), 56, Align.START, true),
            new Column(context.say("wall.change-now"), 46, Align.START, true),
            new Column(context.say("wall.change-before"), 46, Align.START, false),
            new Column(context.say("wall.change-stand"), 38, Align.START, false)),
        rows,
        text);
  }

  private List<String> row(StoneChange c) {
    String before = c.bottomBefore() == null ? "" : sizes(c.bottomBefore(), c.topBefore());
    String stand = shift(c.shift());
    if (c.kind() == Kind.NEW) {
      return List.of(sizes(c.bottom(), c.top()), context.say("wall.change-new"), "");
    }
    if (c.kind() == Kind.GONE) {
      return List.of(context.say("wall.change-gone"), before, "");
    }
    if (c.kind() == Kind.MOVED) {
      return List.of(context.say("wall.change-as-before"), before, stand);
    }
    String now = sizes(c.bottom(), c.top());
    return List.of(now.equals(before) ? context.say("wall.change-return") : now, before, stand);
  }

  private String sizes(Length bottom, Length top) {
    return bottom.equals(top)
        ? format.withUnit(bottom)
        : context.say("wall.change-sizes", format.tape(bottom), format.tape(top));
  }

  private String shift(Length shift) {
    if (format.grid().nearest(shift) == 0) {
      return "";
    }
    return context.say(
        shift.isPositive() ? "wall.change-out" : "wall.change-in", format.tape(shift.abs()));
  }
}

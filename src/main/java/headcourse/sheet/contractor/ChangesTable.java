package headcourse.sheet.contractor;

import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.revision.Changes;
import headcourse.revision.Property;
import headcourse.revision.Value;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import headcourse.units.Angle;
import headcourse.units.Length;
import headcourse.units.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What changed since the revision before, with the numbers that stand on the elevations. */
final class ChangesTable {
  private static final Lettering TEXT = new Lettering(3.5, false);

  private ChangesTable() {}

  /** Nothing where there is no revision to compare with. */
  static void draw(SheetFlow flow, SheetContext context) {
    Changes changes = context.work().changes();
    if (!changes.compared()) {
      return;
    }
    String since =
        changes.since().isEmpty() ? context.say("contractor.changes-before") : changes.since();
    if (changes.items().isEmpty()) {
      flow.say("contractor.changes-none", TEXT, since);
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Changes.Item item : changes.items()) {
      rows.add(
          List.of(
              Integer.toString(item.number()),
              item.opening(),
              item.stone().isEmpty() ? context.say("contractor.c-all") : item.stone(),
              what(context, item)));
    }
    flow.table(
        context.say("contractor.changes", since, context.job().info().revision()),
        List.of(
            new Column(context.say("contractor.c-number"), 14, Align.END, true),
            new Column(context.say("contractor.c-opening"), 24, Align.START, true),
            new Column(context.say("contractor.c-stone"), 34, Align.START, true),
            new Column(context.say("contractor.c-what"), 160, Align.START, false)),
        rows,
        TEXT);
  }

  private static String what(SheetContext context, Changes.Item item) {
    if (item.kind() != Changes.Kind.CHANGED) {
      return context.say("contractor.c-" + item.kind().name().toLowerCase(Locale.ROOT));
    }
    return item.differences().stream()
        .map(
            d ->
                context.say("contractor.p-" + d.property().name().toLowerCase(Locale.ROOT))
                    + " "
                    + value(context, d.property(), d.before())
                    + " → "
                    + value(context, d.property(), d.after()))
        .collect(Collectors.joining("; "));
  }

  private static String value(SheetContext context, Property property, Value value) {
    if (!value.text().isEmpty()) {
      return value.text();
    }
    if (value.numbers().isEmpty()) {
      return context.say("contractor.c-nothing");
    }
    return value.numbers().stream()
        .map(n -> number(context.format(), property.kind(), n))
        .collect(Collectors.joining(" · "));
  }

  private static String number(LengthFormat format, Property.Kind kind, double n) {
    return switch (kind) {
      case LENGTH -> format.withUnit(Length.mm(n));
      case ANGLE -> LengthFormat.degrees(Angle.degrees(n));
      default -> Long.toString(Math.round(n));
    };
  }
}

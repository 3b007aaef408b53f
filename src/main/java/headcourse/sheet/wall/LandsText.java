package headcourse.sheet.wall;

import headcourse.bench.HeadWork;
import headcourse.bench.Landings;
import headcourse.bench.Lands;
import headcourse.job.Care;
import headcourse.job.Setting;
import headcourse.sheet.SheetContext;
import headcourse.text.Words;
import headcourse.units.Decimals;
import headcourse.units.Grid;
import headcourse.units.Length;
import headcourse.units.LengthFormat;

/** How often a head lands when it is built in numbers, in words a mason can act on. */
final class LandsText {
  private final SheetContext context;
  private final HeadWork head;
  private final Lands lands;
  private final Setting setting;

  LandsText(SheetContext context, HeadWork head) {
    this.context = context;
    this.head = head;
    this.lands = head.lands();
    this.setting = context.job().setting();
  }

  /** With the check and without, and what landing means. */
  String often() {
    String clear = context.format().withUnit(head.layout().opening().head().clear());
    return context.say(
        w ->
            w.say(
                    "wall.lands",
                    Decimals.grouped(lands.builds()),
                    Decimals.grouped(lands.landedChecked()),
                    Decimals.grouped(lands.landedUnchecked()))
                + " "
                + w.say(lands.closes() ? "wall.lands-closes" : "wall.lands-bears", clear));
  }

  /** What moves an end most, and what to do about it. */
  String mover() {
    return context.say(this::mover);
  }

  private String mover(Words w) {
    String key =
        switch (lands.mover()) {
          case FENCE -> lands.alike() > 1 ? "fence" : "fence-each";
          case JOINT -> setting.dry() ? "joint" : "joint-mortar";
          default -> lands.mover().word();
        };
    String text = w.say("wall.mover-" + key, lands.alike(), fine(lands.spread()));
    boolean opens = lands.outwards().compareTo(context.format().grid().tick()) >= 0;
    return opens ? text + " " + w.say("wall.lands-outwards", fine(lands.outwards())) : text;
  }

  private String fine(Length length) {
    Grid grid = context.format().grid();
    Length quarter = new Length(grid.tick().picometres() / 4);
    return new LengthFormat(context.job().units(), new Grid(quarter)).withUnit(length);
  }

  /** The class of care, and what it stands for. */
  String assumed() {
    Care care = setting.care();
    LengthFormat f = context.format();
    return context.say(
        w ->
            w.say(
                setting.dry() ? "wall.lands-care" : "wall.lands-care-mortar",
                w.say("wall.care-" + care.name()),
                f.part(care.cut()),
                f.part(care.fence()),
                f.part(setting.dry() ? care.opens() : Care.MORTAR),
                f.part(care.read()),
                f.part(care.key()),
                f.part(Landings.site(context.job(), head.layout()))));
  }
}

package headcourse.sheet.section;

import headcourse.job.Stone;
import headcourse.sheet.SheetContext;

/** What sections call the stone itself. */
public final class StoneLayer {
  private StoneLayer() {}

  /** Its thickness, and its name or else its kind where the job gives one. */
  public static String words(SheetContext context) {
    Stone stone = context.job().stone();
    String name = stone.name().isEmpty() ? stone.kind() : stone.name();
    String thick = context.format().withUnit(stone.thickness());
    return name.isEmpty()
        ? context.say("contractor.layer-stone-unnamed", thick)
        : context.say("contractor.layer-stone", thick, name);
  }
}

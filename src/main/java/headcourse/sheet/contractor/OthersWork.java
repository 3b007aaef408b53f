package headcourse.sheet.contractor;

import headcourse.job.Answers;
import headcourse.sheet.SheetContext;

/**
 * What a section says and shows of the work of others: as the contractor answered, or as it usually
 * is and to be confirmed.
 */
record OthersWork(SheetContext context, Answers answers) {
  String lintel() {
    Answers.Lintel l = answers.lintel();
    if (l.name().isEmpty()) {
      return context.say("contractor.layer-lintel");
    }
    return l.bearing() == null
        ? context.say("ask.lintel-named", l.name())
        : context.say("ask.lintel-bears", l.name(), context.format().withUnit(l.bearing()));
  }

  String barrier() {
    String how = answers.barrier();
    return how.isEmpty()
        ? context.say("contractor.layer-barrier")
        : context.say("ask.barrier-how", how);
  }

  String flashing() {
    Answers.Flashing f = answers.flashing();
    var format = context.format();
    return f == null
        ? context.say("contractor.layer-flashing")
        : context.say("ask.flashing-where", format.withUnit(f.from()), format.withUnit(f.to()));
  }

  /**
   * Where the flashing comes out, mm above a section's soffit.
   *
   * @param usual where it does as a rule
   * @param soffit height of the section's soffit above the line that the head stands on
   */
  double foot(double usual, double soffit) {
    return shown(soffit) ? answers.flashing().from().mm() - soffit : usual;
  }

  // At the crown of an arch it may lie below all that its section shows.
  private boolean shown(double soffit) {
    Answers.Flashing f = answers.flashing();
    return f != null && f.from().mm() - soffit > -10;
  }

  /** Where it ends, no higher than the section is drawn. */
  double top(double usual, double most, double soffit) {
    return shown(soffit) ? Math.min(answers.flashing().to().mm() - soffit, most) : usual;
  }
}

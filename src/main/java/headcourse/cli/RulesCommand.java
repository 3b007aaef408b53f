package headcourse.cli;

import headcourse.rules.RuleBook;
import headcourse.rules.RuleCard;

/** Lists the rules with their sources. */
record RulesCommand(Console console) {
  int run() {
    for (RuleCard card : RuleBook.cards()) {
      console.say(
          card.name()
              + " ("
              + card.severity().word()
              + ")\n  "
              + card.what()
              + "\n  "
              + card.source()
              + " ["
              + card.status().words()
              + "]");
    }
    return Main.DONE;
  }
}

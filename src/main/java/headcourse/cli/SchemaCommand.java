package headcourse.cli;

import headcourse.export.JobSchema;
import headcourse.job.yaml.KeyMeanings;
import headcourse.job.yaml.KeyTable;
import headcourse.layout.shapes.Shapes;
import headcourse.rules.RuleBook;

/** Prints the job file's JSON Schema. */
record SchemaCommand(Console console) {
  int run() {
    return console.say(text().stripTrailing());
  }

  /** The schema of the program as it is, with whatever shapes and rules it was given. */
  static String text() {
    return JobSchema.write(
        KeyTable.of(Shapes.definitions(), RuleBook.limits()),
        KeyMeanings.of(Shapes.definitions(), RuleBook.limits()));
  }
}

package headcourse.cli;

import headcourse.diag.Diagnostic;
import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.job.yaml.Nearest;
import headcourse.text.Languages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the user typed.
 *
 * @param command the command's word; empty where none was given
 * @param files job files, or the file to write
 * @param out folder to write into, or empty for {@code out}
 * @param only kinds of output to draw; empty for all
 * @param paper paper of every bundle, or null
 * @param opening the one opening to draw, or empty for all
 * @param open whether what was drawn is shown
 * @param language of the page, or empty for the job's
 */
record Arguments(
    String command,
    List<String> files,
    String out,
    List<Output> only,
    Paper paper,
    String opening,
    boolean open,
    String language) {
  static final List<String> COMMANDS =
      List.of(
          "form", "new", "check", "choose", "explain", "draw", "watch", "page", "rules", "schema");

  /** Something that {@code draw} writes, by the word after {@code --only}. */
  enum Output {
    BENCH("bench"),
    WALL("wall"),
    CONTRACTOR("contractor"),
    FULL_SIZE("full-size"),
    ORDER("order"),
    SVG("svg"),
    CSV("csv"),
    JSON("json"),
    /** Only where it is asked for, here or in the job. */
    PNG("png");

    private final String word;

    Output(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /** Whether an output is to be drawn; pictures only when asked for, by name or by the job. */
  boolean wants(Output output, boolean pictures) {
    return only.isEmpty() ? output != Output.PNG || pictures : only.contains(output);
  }

  /** Reads the arguments; every fault is added to {@code faults}. */
  static Arguments parse(List<String> args, List<Diagnostic> faults) {
    String command = "";
    List<String> files = new ArrayList<>();
    String out = "";
    List<Output> only = new ArrayList<>();
    Paper paper = null;
    String opening = "";
    boolean open = false;
    String language = "";
    List<Option> given = new ArrayList<>();
    boolean names = false;
    for (int i = 0; i < args.size(); i++) {
      String a = args.get(i);
      String value = null;
      if (a.equals("--") && !names) {
        names = true;
        continue;
      }
      if (!names && a.startsWith("--") && a.contains("=")) {
        value = a.substring(a.indexOf('=') + 1);
        a = a.substring(0, a.indexOf('='));
      }
      if (names || !a.startsWith("-") || a.length() == 1) {
        if (command.isEmpty()) {
          command = a;
        } else {
          files.add(a);
        }
        continue;
      }
      Option option = Option.named(a.equals("-h") ? Option.HELP.word() : a).orElse(null);
      if (option == Option.HELP || option == Option.VERSION) {
        String asked = option.word().substring(2);
        return new Arguments(asked, List.of(command), "", List.of(), null, "", false, "");
      }
      if (option == null) {
        String known = Option.words(Option.of(COMMANDS.contains(command) ? command : "draw"));
        faults.add(fault("unknown option " + a, "options are " + known));
        continue;
      }
      given.add(option);
      if (!option.value().isEmpty()) {
        if (value == null && i + 1 < args.size()) {
          value = args.get(++i);
        }
        if (value == null || value.isEmpty()) {
          faults.add(fault(a + " wants a value", "headcourse --help"));
          continue;
        }
      }
      switch (option) {
        case OUT -> out = value;
        case ONLY -> only.addAll(outputs(value, faults));
        case PAPER -> paper = paper(value, faults);
        case OPENING -> opening = value;
        case LANG -> language = language(value, faults);
        default -> open = true;
      }
    }
    if (command.equals("help")) {
      String asked = files.isEmpty() ? "" : files.get(0);
      return new Arguments("help", List.of(asked), "", List.of(), null, "", false, "");
    }
    if (!command.isEmpty() && !COMMANDS.contains(command)) {
      faults.add(
          fault(
              "unknown command " + command,
              "commands are " + String.join(", ", COMMANDS),
              command.endsWith(".yaml") || command.endsWith(".yml")
                  ? "to draw that file: headcourse draw " + command
                  : Nearest.to(command, COMMANDS)
                      .map(c -> "did you mean headcourse " + c + "?")
                      .orElse("headcourse --help")));
    } else if (!command.isEmpty()) {
      given.removeAll(Option.of(command));
      String others = Option.words(Option.of(command));
      for (Option o : given) {
        faults.add(fault(command + " has no option " + o.word(), "it has " + others));
      }
    }
    return new Arguments(
        command, List.copyOf(files), out, List.copyOf(only), paper, opening, open, language);
  }

  /** What draws the same job whole, to the same place. */
  Arguments drawing() {
    return new Arguments("draw", files, out, List.of(), paper, "", false, "");
  }

  private static String language(String word, List<Diagnostic> faults) {
    if (!Languages.tags().contains(word)) {
      String all = String.join(", ", Languages.tags());
      faults.add(fault("--lang does not know " + word, "write one of " + all));
    }
    return word;
  }

  private static List<Output> outputs(String words, List<Diagnostic> faults) {
    List<Output> found = new ArrayList<>();
    for (String word : words.split(",")) {
      Optional<Output> o =
          List.of(Output.values()).stream().filter(x -> x.word().equals(word.strip())).findFirst();
      if (o.isPresent()) {
        found.add(o.get());
      } else {
        String all =
            List.of(Output.values()).stream().map(Output::word).collect(Collectors.joining(", "));
        faults.add(fault("--only does not know " + word, "write one or several of " + all));
      }
    }
    return found;
  }

  private static Paper paper(String word, List<Diagnostic> faults) {
    Optional<Paper> p = PaperSizes.named(word);
    if (p.isEmpty()) {
      String all = PaperSizes.all().stream().map(Paper::name).collect(Collectors.joining(", "));
      faults.add(fault("--paper does not know " + word, "write one of " + all));
    }
    return p.orElse(null);
  }

  private static Diagnostic fault(String message, String... hints) {
    return Diagnostic.error(null, message, hints);
  }
}

package headcourse.cli;

import headcourse.job.Paper;
import headcourse.job.PaperSizes;
import headcourse.text.Languages;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a shell needs to complete a command line, made of the tables that read it. */
final class Completion {
  private static final List<String> WITHOUT_FILE = List.of("rules", "schema");

  private Completion() {}

  /** The function for bash. */
  static String bash() {
    StringBuilder s = new StringBuilder();
    s.append(
        """
        # Completion of headcourse for bash. Made of the program's own tables: change those.
        _headcourse() {
          local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
          local command=${COMP_WORDS[1]} words= first=
          COMPREPLY=()
          if ((COMP_CWORD == 1)); then
            COMPREPLY=($(compgen -W "@COMMANDS@" -- "$word"))
            return
          fi
          case $before in
            --out) COMPREPLY=($(compgen -d -- "$word")); return ;;
            --paper) COMPREPLY=($(compgen -W "@PAPERS@" -- "$word")); return ;;
            --only)
              [[ $word == *,* ]] && first=${word%,*},
              COMPREPLY=($(compgen -P "$first" -W "@KINDS@" -- "${word##*,}"))
              return ;;
            --lang) COMPREPLY=($(compgen -W "@LANGUAGES@" -- "$word")); return ;;
            --opening) return ;;
          esac
          case $command in
        """);
    for (String command : Arguments.COMMANDS) {
      s.append("    ").append(command).append(") words=\"").append(options(command));
      s.append("\" ;;\n");
    }
    s.append(
        """
          esac
          if [[ $word == -* ]]; then
            COMPREPLY=($(compgen -W "$words" -- "$word"))
            return
          fi
          case $command in
            @NONE@) return ;;
            form) words='!*.pdf' ;;
            *) words='!*.y*ml' ;;
          esac
          compopt -o filenames 2>/dev/null
          mapfile -t COMPREPLY < <(compgen -f -X "$words" -- "$word"; compgen -d -- "$word")
        }
        complete -F _headcourse headcourse
        """);
    return filled(s.toString(), " ").replace("@NONE@", String.join(" | ", WITHOUT_FILE));
  }

  /** The function for zsh. */
  static String zsh() {
    StringBuilder s = new StringBuilder();
    s.append(
        """
        #compdef headcourse
        # Completion of headcourse for zsh. Made of the program's own tables: change those.
        if (( CURRENT == 2 )); then
          compadd -- @COMMANDS@
          return
        fi
        case $words[CURRENT-1] in
          --out) _files -/; return ;;
          --paper) compadd -- @PAPERS@; return ;;
          --only) _values -s , kind @KINDS@; return ;;
          --lang) compadd -- @LANGUAGES@; return ;;
          --opening) return ;;
        esac
        if [[ $words[CURRENT] == -* ]]; then
          case $words[2] in
        """);
    for (String command : Arguments.COMMANDS) {
      s.append("    ").append(command).append(") compadd -- ").append(options(command));
      s.append(" ;;\n");
    }
    s.append(
        """
          esac
          return
        fi
        case $words[2] in
          @NONE@) ;;
          form) _files -g '*.pdf' ;;
          *) _files -g '*.(yaml|yml)' ;;
        esac
        """);
    return filled(s.toString(), " ").replace("@NONE@", String.join(" | ", WITHOUT_FILE));
  }

  private static String options(String command) {
    return Option.of(command).stream().map(Option::word).collect(Collectors.joining(" "));
  }

  private static String filled(String text, String between) {
    return text.replace(
            "@COMMANDS@", String.join(between, Arguments.COMMANDS) + between + options(""))
        .replace("@LANGUAGES@", String.join(between, Languages.tags()))
        .replace(
            "@PAPERS@",
            PaperSizes.all().stream().map(Paper::name).collect(Collectors.joining(between)))
        .replace(
            "@KINDS@",
            Stream.of(Arguments.Output.values())
                .map(Arguments.Output::word)
                .collect(Collectors.joining(between)));
  }
}

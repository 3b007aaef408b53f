package headcourse.page;

import headcourse.choose.Choice;
import headcourse.choose.Choices;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.export.JsonWriter;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.render.svg.SvgRenderer;
import headcourse.sheet.choose.ChoiceCard;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The heads there are to choose from for an opening; taking one writes it into the job. */
final class ChoiceList {
  private final Session session;
  private String state = "";
  private Outcome<Choices> found = Outcome.failed(List.of());

  ChoiceList(Session session) {
    this.session = session;
  }

  private synchronized Outcome<Choices> choices(int opening) throws IOException {
    String now = opening + " " + session.desk().state();
    if (!now.equals(state)) {
      Outcome<Job> job = session.job(session.desk().read());
      found =
          job.value()
              .filter(j -> opening < j.openings().size())
              .map(j -> Choices.checked(j, opening))
              .orElse(Outcome.failed(job.diagnostics()));
      state = now;
    }
    return found;
  }

  /** What there is to choose from. */
  Answer list(int opening) throws IOException {
    Outcome<Choices> all = choices(opening);
    JsonWriter json = new JsonWriter().object().key("said").array();
    all.diagnostics().forEach(d -> json.value(d.message()));
    json.endArray().key("choices").array();
    if (all.value().isPresent()) {
      for (ChoiceCard c : ChoiceCard.of(all.value().get(), session.words())) {
        byte[] svg = SvgRenderer.inline(c.picture(), c.picture().title());
        json.object().key("letter").value(c.choice().letter());
        json.key("svg").value(new String(svg, StandardCharsets.UTF_8));
        json.key("seen").value(c.seen()).key("more").array();
        c.more().forEach(json::value);
        json.endArray().end();
      }
    }
    json.endArray();
    return Answer.json(json.end().toString());
  }

  /**
   * Writes a choice with its settings into the job; no letter gives the choice back.
   *
   * @return nothing; or why it was not written
   */
  List<Diagnostic> take(int opening, String letter) throws IOException {
    String at = "openings[" + opening + "].";
    if (letter.isEmpty()) {
      return session.write(
          List.of(
              new Change(at + "choose", null, "given back"),
              new Change(at + "chosen", null, "given back")));
    }
    Outcome<Choices> all = choices(opening);
    Optional<Choice> choice = all.value().flatMap(c -> c.lettered(letter));
    if (choice.isEmpty()) {
      return List.of(Diagnostic.error(null, "there is no choice " + letter));
    }
    return session.write(
        List.of(
            new Change(at + "choose", letter, "chosen"),
            new Change(at + "chosen", choice.get().settings().text(), "its settings")));
  }
}

package headcourse.page;

import headcourse.bench.HeadWork;
import headcourse.diag.Diagnostic;
import headcourse.diag.Outcome;
import headcourse.export.JsonWriter;
import headcourse.job.Change;
import headcourse.job.Job;
import headcourse.job.yaml.JobOutline;
import headcourse.render.svg.SvgRenderer;
import headcourse.sheet.elevation.ElevationSvg;
import headcourse.sheet.form.MeasuringForm;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the page can ask for. */
final class Routes {
  /** How long an unchanged file is watched for one request, in looks. */
  private static final int LOOKS = 400;

  private static final long LOOK = 50;

  private final Session session;
  private final Cures cures = new Cures();
  private final SheetPictures sheets;
  private final ChoiceList choices;

  Routes(Session session) {
    this.session = session;
    this.sheets = new SheetPictures(session);
    this.choices = new ChoiceList(session);
  }

  /**
   * The answer.
   *
   * @param posts whether it is posted; only then anything is written
   */
  Answer answer(Ask ask, boolean posts) throws IOException {
    String route = ask.route();
    if (posts) {
      return switch (route) {
        case "picture" -> picture(ask);
        case "say" -> say(ask);
        case "set" -> set(ask);
        case "undo" -> {
          session.undo();
          yield look(ask, List.of());
        }
        case "draw" -> draw();
        case "choose" -> look(ask, choices.take(ask.opening(), ask.value("letter")));
        default -> Answer.refused(404, "nothing here");
      };
    }
    return switch (route) {
      case "" -> PageHtml.of(session);
      case "look" -> look(ask, List.of());
      case "wait" -> wait(ask.value("seen"));
      case "where" -> where();
      case "sheets" -> sheets.list();
      case "choices" -> choices.list(ask.opening());
      default ->
          route.startsWith("sheet/")
              ? sheets.picture(route.substring("sheet/".length()))
              : route.startsWith("out/") ? drawn(route.substring("out/".length())) : none();
    };
  }

  /** The picture of the measuring sheet, whose numbers the fields bear. */
  private Answer where() {
    byte[] svg = SvgRenderer.inline(MeasuringForm.picture(), session.words().say("page.where"));
    String text = new String(svg, StandardCharsets.UTF_8);
    return Answer.json(new JsonWriter().object().key("svg").value(text).end().toString());
  }

  private static Answer none() {
    return Answer.refused(404, "nothing here");
  }

  /** The fields with what the file has in them. */
  private Answer look(Ask ask, List<Diagnostic> wrong) throws IOException {
    String state = session.desk().state();
    byte[] bytes = session.desk().read();
    Outcome<JobOutline> outline = session.outline(bytes);
    JsonWriter json = new JsonWriter().object();
    json.key("seen").value(state);
    json.key("name").value(session.desk().name());
    json.key("language").value(session.words().tag());
    json.key("undo").value(session.undoes(bytes));
    json.key("wrong").array();
    wrong.forEach(d -> json.value(d.message()));
    json.endArray();
    json.key("readable").value(outline.value().isPresent());
    outline
        .value()
        .ifPresent(
            o -> fields(json, o, Math.min(ask.opening(), Math.max(0, o.size("openings") - 1))));
    return Answer.json(json.end().toString());
  }

  private void fields(JsonWriter json, JobOutline outline, int opening) {
    json.key("title").value(outline.value("job.title").orElse(session.desk().name()));
    json.key("opening").value(opening);
    json.key("openings").array();
    for (int i = 0; i < outline.size("openings"); i++) {
      String at = "openings[" + i + "].";
      json.object().key("mark").value(outline.value(at + "mark").orElse("?"));
      json.key("label").value(outline.value(at + "label").orElse("")).end();
    }
    json.endArray();
    json.key("chosen").value(outline.value("openings[" + opening + "].choose").orElse(""));
    json.key("groups").array();
    new Fields(session.table(), session.words())
        .of(outline, opening)
        .forEach(
            (group, fields) -> {
              json.object().key("name").value(session.words().say("page.group-" + group));
              json.key("id").value(group).key("fields").array();
              fields.forEach(f -> field(json, f, outline, opening));
              json.endArray().end();
            });
    json.endArray();
  }

  private static void field(JsonWriter json, Field f, JobOutline outline, int opening) {
    String path = f.path(opening);
    json.object().key("path").value(path).key("name").value(f.name());
    json.key("about").value(f.about()).key("place").value(f.place());
    json.key("value").value(outline.value(path).orElse(""));
    json.key("words").array();
    f.words().forEach(json::value);
    json.endArray().end();
  }

  /** The head of the opening as it is with what is typed. */
  private Answer picture(Ask ask) throws IOException {
    JsonWriter json = new JsonWriter().object();
    Outcome<byte[]> bytes = session.typed(allowed(ask));
    Outcome<Job> job = bytes.value().map(session::job).orElse(Outcome.failed(bytes.diagnostics()));
    Outcome<HeadWork> head =
        job.value()
            .map(j -> session.head(j, ask.opening()))
            .orElse(Outcome.failed(job.diagnostics()));
    if (head.value().isPresent()) {
      var page = ElevationSvg.page(job.value().get(), head.value().get());
      byte[] svg = SvgRenderer.inline(page, page.title());
      json.key("svg").value(new String(svg, StandardCharsets.UTF_8));
    }
    return Answer.json(json.end().toString());
  }

  /** All that is said of the job with what is typed. */
  private Answer say(Ask ask) throws IOException {
    Outcome<byte[]> bytes = session.typed(allowed(ask));
    Notes notes = new Notes();
    if (bytes.value().isPresent()) {
      notes = session.notes(bytes.value().get());
    } else {
      notes.add(
          session.outline(session.desk().read()).value().orElse(null),
          bytes.diagnostics(),
          List.of());
    }
    JsonWriter json = new JsonWriter().object().key("notes").array();
    for (Notes.Note n : notes.all()) {
      json.object().key("path").value(n.path()).key("severity").value(n.severity());
      json.key("word").value(session.words().say("rule.severity-" + n.severity()));
      json.key("text").value(n.text()).key("source").value(n.source());
      json.key("accepted").value(n.accepted()).key("language").value(n.language());
      json.key("hints").array();
      n.hints().forEach(json::value);
      json.endArray().key("cures").array();
      for (List<Change> cure : n.cures()) {
        json.object().key("number").value(cures.offer(cure)).key("text");
        json.value(String.join(" + ", cure.stream().map(Cures::words).toList())).end();
      }
      json.endArray().end();
    }
    return Answer.json(json.endArray().end().toString());
  }

  private Answer set(Ask ask) throws IOException {
    List<Change> changes = allowed(ask);
    changes.addAll(cures.of(ask.value("cure")));
    return look(ask, session.write(changes));
  }

  /** What is typed, in fields of the page alone: no other place of the file is written to. */
  private List<Change> allowed(Ask ask) throws IOException {
    List<Change> changes = new ArrayList<>(ask.changes());
    if (changes.isEmpty()) {
      return changes;
    }
    JobOutline outline = session.outline(session.desk().read()).value().orElse(null);
    Fields fields = new Fields(session.table(), session.words());
    for (Change c : changes) {
      if (outline != null && !fields.have(outline, ask.opening(), c.path())) {
        throw new IllegalArgumentException("no field " + c.path());
      }
    }
    return changes;
  }

  private Answer draw() {
    Desk.Drawn drawn = session.desk().draw();
    JsonWriter json = new JsonWriter().object().key("done").value(drawn.done());
    json.key("said").value(drawn.said()).key("files").array();
    drawn.files().forEach(json::value);
    return Answer.json(json.endArray().end().toString());
  }

  private Answer drawn(String name) {
    Map<String, String> types =
        Map.of(
            "pdf", "application/pdf",
            "svg", "image/svg+xml",
            "png", "image/png",
            "csv", "text/csv; charset=utf-8",
            "json", "application/json; charset=utf-8",
            "html", "text/html; charset=utf-8");
    String type = types.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "text/plain");
    return session
        .desk()
        .drawn(name)
        .map(b -> new Answer(200, type, b, "default-src 'none'; style-src 'unsafe-inline'"))
        .orElseGet(Routes::none);
  }

  /** Answers when the files are no longer as they were seen, or after a while. */
  private Answer wait(String seen) throws IOException {
    String state = session.desk().state();
    try {
      for (int i = 0; i < LOOKS && state.equals(seen); i++) {
        Thread.sleep(LOOK);
        state = session.desk().state();
      }
      // Somebody may be writing it just now: it counts when it has come to rest.
      for (String before = ""; !state.equals(seen) && !state.equals(before); ) {
        before = state;
        Thread.sleep(LOOK);
        state = session.desk().state();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return Answer.json(new JsonWriter().object().key("seen").value(state).end().toString());
  }
}

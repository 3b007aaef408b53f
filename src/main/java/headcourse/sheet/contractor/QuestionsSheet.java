package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.drawing.Lettering;
import headcourse.drawing.Mark.Align;
import headcourse.job.Bundle;
import headcourse.job.Contract;
import headcourse.job.Opening;
import headcourse.sheet.PageDraft;
import headcourse.sheet.SheetComposer;
import headcourse.sheet.SheetContext;
import headcourse.sheet.SheetContext.Turn;
import headcourse.sheet.SheetFlow;
import headcourse.sheet.Table.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the contractor is asked before stone is cut, numbered, with what follows until he answers.
 */
public final class QuestionsSheet implements SheetComposer {
  private static final Lettering TEXT = new Lettering(3.5, false);
  private static final Lettering CELL = Lettering.NOTE;

  /** The questions of a contractor's set. */
  public QuestionsSheet() {}

  @Override
  public Bundle bundle() {
    return Bundle.CONTRACTOR;
  }

  @Override
  public List<PageDraft> compose(SheetContext context) {
    String title = context.say("ask.title");
    return SheetFlow.pages(
        context,
        Turn.LANDSCAPE,
        "",
        title,
        "",
        1,
        flow -> {
          flow.page().bookmark(1, title, "questions", flow.page().area().minY());
          flow.say("ask.text", CELL);
          List<Column> columns =
              List.of(
                  new Column(context.say("ask.number"), 10, Align.START, true),
                  new Column(context.say("ask.question"), 66, Align.START, false),
                  new Column(context.say("ask.openings"), 22, Align.START, true),
                  new Column(context.say("ask.answer"), 54, Align.START, true),
                  new Column(context.say("ask.until"), 106, Align.START, false));
          flow.table(columns, rows(context), CELL);
          flow.space(4);
          flow.say("ask.signed", TEXT);
          AnchorTable.put(flow, context);
        });
  }

  private static List<List<String>> rows(SheetContext context) {
    Contract contract = context.job().info().contract();
    List<List<String>> rows = new ArrayList<>();
    for (Question q : Question.values()) {
      // Openings of which the same is said share a row.
      Map<Question.Said, List<String>> marks = new LinkedHashMap<>();
      for (HeadWork head : context.work().heads()) {
        Opening o = head.layout().opening();
        marks
            .computeIfAbsent(q.said(context, head, contract.of(o)), k -> new ArrayList<>())
            .add(o.mark());
      }
      boolean first = true;
      for (var e : marks.entrySet()) {
        Question.Said said = e.getKey();
        rows.add(
            List.of(
                first ? Integer.toString(q.ordinal() + 1) : "",
                first ? context.say(q.key()) : "",
                String.join(", ", e.getValue()),
                said.answered() ? said.text() : context.say("ask.blank"),
                said.answered() ? "" : said.text()));
        first = false;
      }
    }
    return rows;
  }
}

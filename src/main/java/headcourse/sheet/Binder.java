package headcourse.sheet;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.JobInfo;
import headcourse.text.SecondLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Numbers the pages of a bundle and puts the frame around each. */
public final class Binder {
  private Binder() {}

  /** The bundle's pages, finished. */
  public static PageSet bind(SheetContext context, List<PageDraft> drafts) {
    return bind(context, drafts, context.bundle().word());
  }

  /**
   * Pages that are no part of a bundle, finished.
   *
   * @param document what they are, as in {@code frame.bundle-choose}
   */
  public static PageSet bind(SheetContext context, List<PageDraft> drafts, String document) {
    JobInfo info = context.job().info();
    List<Page> pages = new ArrayList<>();
    Map<String, String> fields = fields(context, document);
    for (int i = 0; i < drafts.size(); i++) {
      PageDraft d = drafts.get(i);
      List<Mark> marks = new ArrayList<>();
      fields.put("sheet", context.say("frame.page-of", i + 1, drafts.size()));
      fields.put("scale", d.scale());
      fields.put("piece", d.label());
      marks.addAll(context.frame().place(d.width(), d.height(), fields));
      marks.addAll(d.board().marks());
      pages.add(new Page(d.width(), d.height(), d.label(), d.title(), marks, d.bookmarks()));
    }
    String title = join(join(info.number(), info.title()), context.say("frame.bundle-" + document));
    return new PageSet(
        context.bundle(),
        SecondLanguage.plain(title),
        info.drawnBy(),
        context.words().tag(),
        context.words().secondTag(),
        info.date(),
        pages);
  }

  // What is the same on every page.
  private static Map<String, String> fields(SheetContext context, String document) {
    JobInfo info = context.job().info();
    Map<String, String> f = new TreeMap<>();
    f.put("owner", info.mason());
    f.put("number", info.number());
    f.put("title", info.title());
    f.put("site", info.site());
    f.put("client", info.client());
    f.put("drawn-by", info.drawnBy());
    f.put("approved", "");
    f.put("date", info.date());
    f.put("revision", info.revision());
    f.put("sheet", "");
    f.put("bundle", context.say("frame.bundle-" + document));
    f.put("language", context.job().language().word());
    f.put("scale", "");
    f.put("piece", "");
    f.put("stone", context.job().stone().name());
    f.put("units", context.job().units().word());
    f.put("paper", context.paper().name());
    f.put("caution", context.say("frame.caution-text"));
    f.put("notes", context.say("frame.notes-text"));
    f.put("view", "");
    // Below each other and short, where both languages share the note's room.
    List<String> view = context.words().each("frame.view-short");
    for (String field : List.copyOf(f.keySet())) {
      f.put("caption-" + field, context.say("frame." + field));
    }
    if (view.size() > 1) {
      f.put("caption-view", String.join("\n", view));
    }
    return f;
  }

  private static String join(String a, String b) {
    return a.isEmpty() ? b : b.isEmpty() ? a : a + " · " + b;
  }
}

package headcourse.sheet;

import headcourse.drawing.Mark;
import headcourse.drawing.Page;
import headcourse.drawing.PageRun;
import headcourse.drawing.PageSet;
import headcourse.job.JobInfo;
import headcourse.text.SecondLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;

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
    List<Page> blank = new ArrayList<>();
    List<List<Mark>> drawings = new ArrayList<>();
    List<String> scales = new ArrayList<>();
    for (PageDraft d : drafts) {
      blank.add(new Page(d.width(), d.height(), d.label(), d.title(), List.of(), d.bookmarks()));
      drawings.add(d.board().marks());
      scales.add(d.scale());
    }
    Map<String, String> shared = fields(context, document);
    IntFunction<List<Mark>> frame =
        i -> {
          Page page = blank.get(i);
          Map<String, String> fields = new TreeMap<>(shared);
          fields.put("sheet", context.say("frame.page-of", i + 1, blank.size()));
          fields.put("scale", scales.get(i));
          fields.put("piece", page.label());
          return context.frame().place(page.width(), page.height(), fields);
        };
    String title = join(join(info.number(), info.title()), context.say("frame.bundle-" + document));
    return new PageSet(
        context.bundle(),
        SecondLanguage.plain(title),
        info.drawnBy(),
        context.words().tag(),
        context.words().secondTag(),
        info.date(),
        new PageRun(blank, drawings, frame));
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

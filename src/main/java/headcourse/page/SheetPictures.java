package headcourse.page;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.export.JsonWriter;
import headcourse.job.Bundle;
import headcourse.render.svg.SvgRenderer;
import headcourse.sheet.SheetFrame;
import headcourse.sheet.book.SheetBook;
import headcourse.work.ShopWork;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All sheets of the job as pictures; composed when they are asked for, once for each state. */
final class SheetPictures {
  private final Session session;
  private String state = "";
  private Map<Bundle, List<Page>> pages = Map.of();

  SheetPictures(Session session) {
    this.session = session;
  }

  private synchronized Map<Bundle, List<Page>> pages() throws IOException {
    String now = session.desk().state();
    if (!now.equals(state)) {
      pages = composed();
      state = now;
    }
    return pages;
  }

  private Map<Bundle, List<Page>> composed() throws IOException {
    Optional<ShopWork> work = session.worked();
    Optional<SheetFrame> frame = work.flatMap(w -> session.desk().frame(w.job()).value());
    Map<Bundle, List<Page>> all = new LinkedHashMap<>();
    if (frame.isPresent()) {
      for (Bundle b : Bundle.values()) {
        PageSet set = SheetBook.compose(work.get(), b, frame.get());
        all.put(b, set.pages());
      }
    }
    return all;
  }

  /** What sheets there are. */
  Answer list() throws IOException {
    JsonWriter json = new JsonWriter().object().key("bundles").array();
    Map<Bundle, List<Page>> all = pages();
    for (Bundle b : order(all)) {
      json.object().key("name").value(b.word()).key("pages").array();
      for (Page p : all.get(b)) {
        json.object().key("title").value(p.title() + " · " + p.label());
        json.key("width").value(p.width()).key("height").value(p.height()).end();
      }
      json.endArray().end();
    }
    return Answer.json(json.endArray().key("seen").value(state).end().toString());
  }

  /** The wall's first, as on the job's overview. */
  private static List<Bundle> order(Map<Bundle, List<Page>> all) {
    List<Bundle> order = new ArrayList<>(all.keySet());
    if (order.remove(Bundle.WALL)) {
      order.add(0, Bundle.WALL);
    }
    return order;
  }

  /** One sheet, by its bundle and number: {@code wall/0.svg}. */
  Answer picture(String name) throws IOException {
    for (var e : pages().entrySet()) {
      String start = e.getKey().word() + "/";
      if (name.matches(start + "[0-9]{1,5}\\.svg")) {
        int n = Integer.parseInt(name.substring(start.length(), name.length() - ".svg".length()));
        if (n < e.getValue().size()) {
          Page page = e.getValue().get(n);
          return Answer.svg(SvgRenderer.render(page, page.title()));
        }
      }
    }
    return Answer.refused(404, "no such sheet");
  }
}

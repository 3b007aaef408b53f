package headcourse.export;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.job.Bundle;
import headcourse.render.svg.SvgRenderer;
import headcourse.text.Words;

/**
 * The part of the overview that shows one bundle: every page as a picture. Pages at full size are
 * only named: a browser would print them at a scale of its own.
 */
public final class BundlePictures {
  private BundlePictures() {}

  /**
   * The part's markup, UTF-8.
   *
   * @param pictured whether pages are shown; else they are only named
   */
  public static byte[] of(PageSet set, Words words, boolean pictured) {
    String word = set.bundle().word();
    String file = word + ".pdf";
    Html html = new Html(1 << 17);
    html.raw("<section id=\"").raw(word).raw("\">\n<h2>");
    html.link(file, file).raw("</h2>\n<p>").text(set.title()).raw("</p>\n");
    boolean shown = pictured && set.bundle() != Bundle.FULL_SIZE;
    if (set.bundle() == Bundle.FULL_SIZE) {
      words.each("overview.full-size").forEach(t -> html.element("p", t));
    }
    String up = words.say("overview.up");
    int number = 0;
    for (Page page : shown ? set.pages() : set.blank()) {
      number++;
      boolean wide = page.width() > page.height();
      String figure = wide ? "<figure class=\"wide\">\n<figcaption>" : "<figure>\n<figcaption>";
      html.raw(shown ? figure : "<p>");
      html.text(number + " / " + set.pages().size() + " · ");
      html.link(file + "#page=" + number, page.title() + " · " + page.label());
      if (shown) {
        html.raw(" ").link("#top", up).raw("</figcaption>\n");
        html.raw(SvgRenderer.inline(page, page.title() + " " + page.label()));
        html.raw("</figure>\n");
      } else {
        html.raw("</p>\n");
      }
    }
    html.raw("<p>").link("#top", up).raw("</p>\n");
    return html.raw("</section>\n").toBytes();
  }
}

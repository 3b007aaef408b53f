package headcourse.overview;

import headcourse.drawing.Page;
import headcourse.drawing.PageSet;
import headcourse.render.svg.SvgRenderer;

/** The part of the overview that shows one bundle: every page as a picture. */
public final class BundlePictures {
  private BundlePictures() {}

  /** The part's markup, UTF-8. */
  public static byte[] of(PageSet set) {
    String word = set.bundle().word();
    String file = word + ".pdf";
    Html html = new Html(1 << 17);
    html.raw("<section id=\"").raw(word).raw("\">\n<h2>");
    html.link(file, file).raw("</h2>\n<p>").text(set.title()).raw("</p>\n");
    int number = 0;
    for (Page page : set.pages()) {
      number++;
      boolean wide = page.width() > page.height();
      html.raw("<figure").raw(wide ? " class=\"wide\"" : "").raw(">\n");
      html.raw("<figcaption>").text(number + " / " + set.pages().size() + " · ");
      html.link(file + "#page=" + number, page.title() + " · " + page.label());
      html.raw("</figcaption>\n");
      html.raw(SvgRenderer.inline(page, page.title() + " " + page.label()));
      html.raw("</figure>\n");
    }
    return html.raw("</section>\n").toBytes();
  }
}

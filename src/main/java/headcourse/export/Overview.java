package headcourse.export;

import headcourse.bench.HeadWork;
import headcourse.job.JobInfo;
import headcourse.layout.Bearing;
import headcourse.layout.HeadLayout;
import headcourse.layout.Side;
import headcourse.render.svg.SvgRenderer;
import headcourse.rules.Finding;
import headcourse.rules.RuleBook;
import headcourse.text.Words;
import headcourse.units.LengthFormat;
import headcourse.work.ShopWork;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * The page that shows a job's whole folder, {@code index.html}: for a telephone on the scaffold,
 * without scripts and without anything from elsewhere.
 */
public final class Overview {
  private static final String STYLE =
      """
      :root{color-scheme:light}
      body{margin:0 auto;padding:.8rem;max-width:70rem;font:1rem/1.45 sans-serif;color:#000;\
      background:#fff;overflow-wrap:anywhere}
      h1{font-size:1.5rem;margin:.2rem 0}
      h2{font-size:1.2rem;margin:2rem 0 .3rem;border-top:2px solid #000;padding-top:.4rem}
      a{color:#000;display:inline-block;min-height:44px;min-width:44px;line-height:44px;\
      padding:0 .4rem 0 0;font-weight:bold}
      table{border-collapse:collapse}
      th,td{text-align:left;vertical-align:top;padding:.3rem .8rem .3rem 0;\
      border-bottom:1px solid #888}
      .wrap{overflow-x:auto;overflow-wrap:normal}
      ul{padding-left:1.2rem}
      nav ul{list-style:none;padding:0}
      main td{white-space:nowrap}
      figure{margin:1rem 0;content-visibility:auto;contain-intrinsic-size:auto 30rem}
      svg{display:block;width:100%;height:auto;border:1px solid #888;box-sizing:border-box}
      @media print{a[href="#top"]{display:none}}
      @media(max-width:30rem){main table{font-size:.75rem}main th,main td{padding-right:.35rem}}
      @media(min-width:60rem){figure:not(.wide){width:70%}}
      """;

  private final ShopWork work;
  private final Words words;
  private final boolean pictured;
  private final Html html = new Html(1 << 19);

  private Overview(ShopWork work, boolean pictured) {
    this.work = work;
    this.pictured = pictured;
    this.words = Words.of(work.job().language().word()).ofArch(work.archesOnly());
  }

  /**
   * The file, UTF-8.
   *
   * @param work the job worked out
   * @param picture the openings in their wall, an SVG element: what a telephone shows first
   * @param files names of the other files in the folder
   * @param bundles the parts made by {@link BundlePictures}, in the order to show them
   * @param pictured whether they show their pages; else each opening leads to its elevation
   */
  public static byte[] write(
      ShopWork work,
      byte[] picture,
      Collection<String> files,
      List<byte[]> bundles,
      boolean pictured) {
    Overview o = new Overview(work, pictured);
    o.head();
    o.html.raw("<figure class=\"wide\">\n").raw(picture).raw("</figure>\n");
    o.contents(files);
    o.openings();
    for (byte[] b : bundles) {
      o.html.raw(b);
    }
    o.findings();
    o.html.raw("</main>\n<footer>\n");
    o.words.each("frame.caution-text").forEach(t -> o.html.element("p", t));
    return o.html.raw("</footer>\n</body>\n</html>\n").toBytes();
  }

  private void head() {
    JobInfo info = work.job().info();
    String name = info.title().isBlank() ? work.job().name() : info.title();
    html.raw("<!DOCTYPE html>\n<html lang=\"").text(words.tag()).raw("\">\n<head>\n");
    html.raw("<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" ");
    html.raw("content=\"width=device-width, initial-scale=1\"/>\n").element("title", name);
    html.raw("<style>\n")
        .raw(STYLE)
        .raw(SvgRenderer.TEXT_RULE)
        .raw("</style>\n</head>\n<body>\n<header id=\"top\">\n");
    html.element("h1", name).raw("<div class=\"wrap\"><table>\n");
    line("number", info.number());
    line("revision", info.revision());
    line("date", info.date());
    line("site", info.site());
    line("client", info.client());
    line("owner", info.mason());
    line("drawn-by", info.drawnBy());
    line("stone", work.job().stone().name());
    html.raw("</table></div>\n</header>\n");
  }

  private void line(String field, String value) {
    if (!value.isBlank()) {
      html.raw("<tr><th scope=\"row\">").text(words.say("frame." + field));
      html.raw("</th><td>").text(value).raw("</td></tr>\n");
    }
  }

  private void contents(Collection<String> files) {
    html.raw("<nav>\n<ul>\n");
    for (String f : files) {
      html.raw("<li>").link(f, f);
      if (f.endsWith(".pdf")) {
        String word = f.substring(0, f.length() - 4);
        boolean named = word.equals("full-size") || !pictured;
        String what = named ? "overview.pages" : "overview.pictures";
        html.raw(" ").link("#" + word, words.say(what));
      }
      html.raw("</li>\n");
    }
    html.raw("<li>").link("#findings", words.say("overview.findings")).raw("</li>\n");
    html.raw("</ul>\n</nav>\n<main>\n");
  }

  private void openings() {
    html.raw("<section>\n").element("h2", words.say("overview.openings"));
    if (!pictured) {
      words.each("overview.many").forEach(t -> html.element("p", t));
    }
    html.raw("<div class=\"wrap\"><table>\n<thead><tr>");
    for (String column : List.of("opening", "count", "head", "width", "stones", "bearing")) {
      html.raw("<th scope=\"col\">").text(words.say("overview." + column)).raw("</th>");
    }
    html.raw("</tr></thead>\n<tbody>\n");
    for (HeadWork head : work.heads()) {
      var layout = head.layout();
      var opening = layout.opening();
      html.raw("<tr><th scope=\"row\">");
      if (pictured) {
        html.text(opening.mark());
      } else {
        html.link("elevation-" + opening.mark() + ".svg", opening.mark());
      }
      html.raw("</th>");
      cell(Integer.toString(opening.count()));
      cell(words.sayOr("contractor.shape-" + opening.head().shape(), opening.head().shape()));
      cell(format().building(layout.halfWidth().times(2)));
      cell(Integer.toString(head.pieces().size()));
      cell(bearing(layout, Side.LEFT) + ", " + bearing(layout, Side.RIGHT));
      html.raw("</tr>\n");
    }
    html.raw("</tbody>\n</table></div>\n</section>\n");
  }

  private String bearing(HeadLayout layout, Side side) {
    Bearing bearing = layout.bearing(side);
    String on = format().withUnit(bearing.onWall(work.job().grid()));
    return layout.fanned()
        ? words.say("overview.bearing-top", on, format().withUnit(bearing.onTop(work.job().grid())))
        : on;
  }

  private LengthFormat format() {
    return new LengthFormat(work.job().units(), work.job().grid());
  }

  private void cell(String text) {
    html.raw("<td>").text(text).raw("</td>");
  }

  private void findings() {
    html.raw("<section id=\"findings\">\n").element("h2", words.say("overview.findings"));
    List<Finding> findings = RuleBook.summary(work.job(), work.findings());
    if (findings.isEmpty()) {
      html.element("p", words.say("overview.no-findings"));
    } else {
      html.raw("<ul>\n");
      for (Finding f : findings) {
        html.raw("<li><strong>")
            .text(words.say("rule.severity-" + f.severity().word()))
            .raw("</strong> ");
        String status = words.say("rule.status-" + f.status().name().toLowerCase(Locale.ROOT));
        html.text(f.message() + " (" + f.source() + "; " + status + ")");
        if (f.accepted() != null) {
          html.text(" · " + words.say("overview.accepted") + ": " + f.accepted());
        }
        html.raw("</li>\n");
      }
      html.raw("</ul>\n");
    }
    html.raw("<p>").link("#top", words.say("overview.up")).raw("</p>\n</section>\n");
  }
}

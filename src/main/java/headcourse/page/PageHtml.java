package headcourse.page;

import headcourse.render.svg.SvgRenderer;
import headcourse.text.Words;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page itself: one file with its style and its script, its words put in. */
final class PageHtml {
  private static final Pattern WORD = Pattern.compile("\\{\\{([a-z-]+)\\}\\}");
  private static final Pattern SCRIPT = Pattern.compile("(?s)<script>(.*?)</script>");
  private static final Pattern STYLE = Pattern.compile("(?s)<style>(.*?)</style>");

  private PageHtml() {}

  static Answer of(Session session) throws IOException {
    session.outline(session.desk().read());
    Words words = session.words();
    Matcher places = WORD.matcher(template());
    StringBuilder html = new StringBuilder();
    while (places.find()) {
      places.appendReplacement(html, Matcher.quoteReplacement(put(places.group(1), words)));
    }
    String page = places.appendTail(html).toString();
    String policy =
        "default-src 'none'; script-src "
            + sum(SCRIPT, page)
            + "; style-src "
            + sum(STYLE, page)
            + "; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none';"
            + " frame-ancestors 'none'";
    return new Answer(
        200, "text/html; charset=utf-8", page.getBytes(StandardCharsets.UTF_8), policy);
  }

  private static String put(String what, Words words) {
    return switch (what) {
      case "tag" -> words.tag();
      case "caution" -> escaped(words.say("frame.caution-text"));
      case "svg-rule" -> SvgRenderer.TEXT_RULE;
      default -> escaped(words.say("page." + what));
    };
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }

  private static String template() throws IOException {
    try (InputStream in = PageHtml.class.getResourceAsStream("/headcourse/page/page.html")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** What a policy lets in: the very text (Content Security Policy Level 2, hash sources). */
  private static String sum(Pattern element, String page) {
    Matcher m = element.matcher(page);
    if (!m.find()) {
      throw new IllegalStateException("the page has no " + element);
    }
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(m.group(1).getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(sum) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}

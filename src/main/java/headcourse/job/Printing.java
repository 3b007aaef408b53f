package headcourse.job;

/**
 * How a job is printed.
 *
 * @param papers paper of each bundle
 * @param language words on the sheets
 * @param frame path of the sheet frame, relative to the working folder; empty for the built-in one
 * @param pictures whether elevations are drawn as pictures in pixels, too
 * @param everyOutline whether plain rectangles are drawn at full size, too
 */
public record Printing(
    Papers papers, Language language, String frame, boolean pictures, boolean everyOutline) {
  /** The same on other paper. */
  Printing on(Papers other) {
    return new Printing(other, language, frame, pictures, everyOutline);
  }
}

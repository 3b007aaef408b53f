package headcourse.sheet.choose;

import headcourse.choose.Choice;
import headcourse.choose.Choices;
import headcourse.drawing.Board;
import headcourse.drawing.Page;
import headcourse.geom.Box;
import headcourse.job.Job;
import headcourse.sheet.Scale;
import headcourse.text.Words;
import java.util.List;

/**
 * A choice for a screen: its picture, and what is said of it on the sheet.
 *
 * @param choice the choice
 * @param picture its picture; those of one opening are as wide as each other, to one scale
 * @param seen what is seen of it
 * @param more bond, blanks, how surely it lands, price and mass; a sentence each
 */
public record ChoiceCard(Choice choice, Page picture, String seen, List<String> more) {
  private static final double MARGIN = 1;

  /** Copies the sentences. */
  public ChoiceCard {
    more = List.copyOf(more);
  }

  /** Cards of all that are pictured, in their order. */
  public static List<ChoiceCard> of(Choices choices, Words words) {
    Job job = choices.pictured().get(0).job();
    ChoiceText text = new ChoiceText(words, job);
    List<Scale> ladder = Scale.ladder(job.units());
    // A screen fits it in; a middle rung gives lines of a fair weight.
    Scale scale = ladder.get(ladder.size() / 2);
    Box all = null;
    for (Choice c : choices.pictured()) {
      Box own = ChoicePicture.around(c.head());
      all = all == null ? own : all.union(own);
    }
    double width = all.width() * scale.factor() + 2 * MARGIN;
    double middle = -all.minX() * scale.factor() + MARGIN;
    return choices.pictured().stream()
        .map(c -> card(c, scale, width, middle, text, words))
        .toList();
  }

  private static ChoiceCard card(
      Choice c, Scale scale, double width, double middle, ChoiceText text, Words words) {
    ChoicePicture picture = new ChoicePicture(c, scale);
    Board board = new Board();
    double left = middle + ChoicePicture.around(c.head()).minX() * scale.factor();
    picture.draw(board, left, MARGIN);
    String title = words.say("choose.picture", c.letter(), c.head().opening().mark());
    Page page =
        new Page(width, picture.height() + 2 * MARGIN, c.letter(), title, board.marks(), List.of());
    return new ChoiceCard(
        c,
        page,
        text.seen(c),
        List.of(text.bond(c), text.blanks(c), text.lands(c), text.amounts(c)));
  }
}

package headcourse.job;

/**
 * A stone that was cut as its ticket says, and is good.
 *
 * @param path where it stands in the job
 * @param opening the opening's mark
 * @param stone the stone's mark in the opening, as in L1
 * @param piece the blank with its number that it was cut from, as in C2#3; empty where that is the
 *     one on its ticket
 */
public record CutStone(String path, String opening, String stone, String piece) {
  /** Its full mark, as in D1-L1. */
  public String mark() {
    return opening + "-" + stone;
  }
}

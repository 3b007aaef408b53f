package headcourse.work;

import headcourse.bench.HeadWork;
import java.util.List;

/** Numbers alike pieces across the heads of a job. */
final class AlikeNumbers {
  private AlikeNumbers() {}

  static List<HeadWork> across(List<HeadWork> heads) {
    return heads;
  }
}

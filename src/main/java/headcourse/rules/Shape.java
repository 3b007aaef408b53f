package headcourse.rules;

import headcourse.bench.HeadWork;

/** The families of heads that rules tell apart. */
enum Shape {
  /** Upright stones. */
  SOLDIER,
  /** Flat, with joints that fan out. */
  JACK,
  /** A curved soffit. */
  CURVED;

  static Shape of(HeadWork head) {
    return switch (name(head)) {
      case "soldier" -> SOLDIER;
      case "jack" -> JACK;
      default -> CURVED;
    };
  }

  /** The shape's name in the job file. */
  static String name(HeadWork head) {
    return head.layout().opening().head().shape();
  }
}

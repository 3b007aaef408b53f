package headcourse.cli;

/** The command line. */
public final class Main {
  private Main() {}

  /** Runs the program. */
  public static void main(String[] args) {
    System.out.println("headcourse");
  }
}

package headcourse.sheet;

/** Something that a sheet must show and that its paper is too small for. */
public final class NoRoom extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  /**
   * There is no room.
   *
   * @param what what there is no room for
   */
  public NoRoom(String what) {
    super(what);
  }
}

package headcourse.stock;

public final class Try4 {
  public static void main(String[] a) {
    Pile p = AwkwardPile.of(1);
    Pile.Head h = p.heads().get(0).plain();
    RowShape r = new RowShape(h, h.right(), 3, 1);
    System.out.println(SweepTables.most(h, h.right()) + " " + r.sensible() + " " + r.comesOut());
    for (long e = 57; e <= 68; e++)
      System.out.println(
          e
              + " off "
              + r.off(e)
              + " least "
              + r.least(e)
              + " most "
              + r.most(e)
              + " floor "
              + r.floor(e)
              + " widths "
              + r.widths(e)
              + " two "
              + r.two(e));
  }
}

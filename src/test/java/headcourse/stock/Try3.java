package headcourse.stock;

public final class Try3 {
  public static void main(String[] a) {
    Pile p = AwkwardPile.of(1);
    System.out.println(p);
    System.out.println(new GreedyHand(p).sawn());
    System.out.println(PileSolver.solve(p, 2_000_000));
    System.out.println(new ConstraintPile(p).solve(60));
  }
}

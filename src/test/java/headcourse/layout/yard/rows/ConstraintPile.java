package headcourse.layout.yard.rows;

import java.util.ArrayList;
import java.util.List;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * The choice of stones as a model for a general constraint solver (Choco 5.0.0): the same rules and
 * the same cost, written anew from their definitions, for heads whose sides are {@link PlainSide}.
 */
final class ConstraintPile {
  private final Pile pile;
  private final Model model = new Model();
  private final List<IntVar> decisions = new ArrayList<>();
  private final List<IntVar> allPieces = new ArrayList<>();
  private final List<IntVar> sawn = new ArrayList<>();
  private final List<IntVar> imbalance = new ArrayList<>();
  private final List<IntVar> bearing = new ArrayList<>();
  private final int[] usable;
  private final int longest;

  private ConstraintPile(Pile pile) {
    this.pile = pile;
    usable = new int[pile.pieces().size() + 1];
    int top = 0;
    for (int i = 1; i < usable.length; i++) {
      usable[i] = (int) pile.pieces().get(i - 1).usable();
      top = Math.max(top, usable[i]);
    }
    longest = top;
  }

  /**
   * Solves: the least that is sawn off, then within what is given the sides most alike.
   *
   * @param seconds when to give up
   * @return cost with bearings in ticks, or null where there is no choice; throws where it gave up
   */
  static Cost solve(Pile pile, int seconds) {
    Cost least = new ConstraintPile(pile).best(Long.MAX_VALUE, seconds);
    return least == null
        ? null
        : new ConstraintPile(pile).best(least.sawn() + pile.give(), seconds);
  }

  private Cost best(long cap, int seconds) {
    for (int h = 0; h < pile.heads().size(); h++) {
      head(h);
    }
    model.allDifferentExcept0(allPieces.toArray(IntVar[]::new)).post();
    int big = 1000;
    IntVar s = total("sawn", sawn, big - 1);
    IntVar d = total("imbalance", imbalance, big - 1);
    IntVar b = total("bearing", bearing, big - 1);
    IntVar cost = model.intVar("cost", 0, big * big * big);
    boolean first = cap == Long.MAX_VALUE;
    IntVar[] parts = first ? new IntVar[] {s, d, b} : new IntVar[] {d, s, b};
    model.scalar(parts, new int[] {big * big, big, 1}, "=", cost).post();
    if (!first) {
      model.arithm(s, "<=", (int) cap).post();
    }
    model.getSolver().setSearch(Search.domOverWDegSearch(decisions.toArray(IntVar[]::new)));
    model.getSolver().limitTime(seconds + "s");
    Solution best = model.getSolver().findOptimalSolution(cost, false);
    if (model.getSolver().isStopCriterionMet()) {
      throw new IllegalStateException(
          "gave up" + (best == null ? "" : " at " + best.getIntVal(cost)));
    }
    return best == null
        ? null
        : new Cost(0, 0, 0, best.getIntVal(s), best.getIntVal(d), best.getIntVal(b));
  }

  private IntVar total(String name, List<IntVar> of, int most) {
    IntVar t = model.intVar(name, 0, most);
    if (of.isEmpty()) {
      model.arithm(t, "=", 0).post();
    } else {
      model.sum(of.toArray(IntVar[]::new), "=", t).post();
    }
    return t;
  }

  private void head(int h) {
    Pile.Head head = pile.heads().get(h);
    IntVar[] left = side(h, 0);
    IntVar[] right = side(h, 1);
    if (head.mirror()) {
      for (int i = 0; i < Math.max(left.length, right.length); i++) {
        IntVar l = i < left.length ? left[i] : model.intVar(0);
        IntVar r = i < right.length ? right[i] : model.intVar(0);
        IntVar diff = model.intVar(0, longest);
        model.distance(l, r, "=", diff).post();
        imbalance.add(model.mul(diff, head.copies()));
      }
    }
  }

  private IntVar[] side(int h, int s) {
    Pile.Head head = pile.heads().get(h);
    Pile.Row row = head.ways().get(0).row(s);
    PlainSide side = (PlainSide) row.side();
    int min = (int) head.min();
    int max = (int) Math.min(head.max(), longest);
    int joint = (int) side.joint();
    int most = (int) ((side.lastEnd() - side.start()) / (min + joint));
    if (row.each() > 0) {
      most = Math.min(most, row.each());
    }
    IntVar[] width = new IntVar[most];
    IntVar[] foot = new IntVar[most];
    BoolVar[] there = new BoolVar[most];
    int before = (int) (side.jamb() - side.clear()) - joint;
    int after = (int) (side.jamb() + side.clear());
    for (int i = 0; i < most; i++) {
      width[i] = model.intVar(0, max);
      foot[i] = model.intVar(0, (int) side.lastEnd());
      there[i] = model.boolVar();
      decisions.add(width[i]);
      model.ifOnlyIf(model.arithm(there[i], "=", 1), model.arithm(width[i], ">", 0));
      model.ifThen(there[i], model.arithm(width[i], ">=", min));
      IntVar step = model.intVar(0, max + joint);
      model.scalar(new IntVar[] {width[i], there[i]}, new int[] {1, joint}, "=", step).post();
      IntVar from = i == 0 ? model.intVar((int) side.start()) : foot[i - 1];
      model.arithm(from, "+", step, "=", foot[i]).post();
      for (int c = 0; c < head.copies(); c++) {
        piece(h, width[i], there[i]);
      }
      if (i > 0) {
        model.arithm(there[i], "<=", there[i - 1]).post();
        // The joint before this stone keeps clear of the jamb line.
        model.ifThen(
            there[i],
            model.or(
                model.arithm(foot[i - 1], "<=", before), model.arithm(foot[i - 1], ">=", after)));
        if (head.jump() < longest) {
          model.ifThen(
              there[i], model.distance(width[i], width[i - 1], "<", (int) head.jump() + 1));
        }
      }
    }
    if (most == 0) {
      model.falseConstraint().post();
      return width;
    }
    model
        .arithm(
            there[Math.max(1, row.each()) - 1 < most ? Math.max(1, row.each()) - 1 : most - 1],
            "=",
            1)
        .post();
    if (row.each() > most) {
      model.falseConstraint().post();
    }
    IntVar end = foot[most - 1];
    model.arithm(end, ">=", (int) side.firstEnd()).post();
    IntVar off = model.intVar(0, (int) side.lastEnd());
    model.distance(end, model.intVar((int) (side.jamb() + side.target())), "=", off).post();
    bearing.add(model.mul(off, head.copies()));
    return width;
  }

  private void piece(int h, IntVar width, BoolVar there) {
    int[] allowed =
        java.util.stream.IntStream.range(0, usable.length)
            .filter(p -> p == 0 || pile.pieces().get(p - 1).fits(h, false))
            .toArray();
    IntVar piece = model.intVar(allowed);
    allPieces.add(piece);
    decisions.add(piece);
    model.ifOnlyIf(model.arithm(there, "=", 1), model.arithm(piece, ">", 0));
    IntVar length = model.intVar(0, longest);
    model.element(length, usable, piece, 0).post();
    IntVar off = model.intVar(0, longest);
    model.arithm(length, "-", width, "=", off).post();
    sawn.add(off);
  }
}

package headcourse.stock.fan;

import headcourse.stock.pile.Pile;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * The choice of stones for one fan as a model for a general constraint solver (Choco 5.0.0): the
 * same rules and the same cost, written anew from their definitions, with where joints cross the
 * two lines as tables; for a head whose sides are {@link PlainFan}.
 */
final class ConstraintFan {
  private static final int BIG = 1000;

  private final FanPile pile;
  private final FanPile.Head head;
  private final FanPile.Fan fan;
  private final Model model = new Model();
  private final List<IntVar> decisions = new ArrayList<>();
  private final List<IntVar> allPieces = new ArrayList<>();
  private final List<IntVar> sawn = new ArrayList<>();
  private final List<IntVar> imbalance = new ArrayList<>();
  private final List<IntVar> bearing = new ArrayList<>();
  private final int[] usable;
  private final int longest;

  private ConstraintFan(FanPile pile, FanPile.Fan fan) {
    this.pile = pile;
    this.head = pile.heads().get(0);
    this.fan = fan;
    this.usable = new int[pile.pieces().size() + 1];
    for (int i = 1; i < usable.length; i++) {
      usable[i] = (int) pile.pieces().get(i - 1).usable();
    }
    this.longest = IntStream.of(usable).max().orElse(0);
  }

  /** The least cost over all striking points, or null where there is no choice. */
  static Pile.Cost least(FanPile pile, int seconds) {
    Pile.Cost best = null;
    for (FanPile.Fan fan : pile.heads().get(0).fans()) {
      Pile.Cost one = new ConstraintFan(pile, fan).solve(seconds);
      best = one != null && (best == null || one.compareTo(best) < 0) ? one : best;
    }
    return best;
  }

  private Pile.Cost solve(int seconds) {
    IntVar[] left = side((PlainFan) fan.left());
    IntVar[] right = side((PlainFan) fan.right());
    for (int i = 0; head.mirror() && i < Math.max(left.length, right.length); i++) {
      IntVar diff = model.intVar(0, longest);
      IntVar zero = model.intVar(0);
      IntVar l = i < left.length ? left[i] : zero;
      model.distance(l, i < right.length ? right[i] : zero, "=", diff).post();
      imbalance.add(model.mul(diff, head.copies()));
    }
    if (allPieces.isEmpty()) {
      return null;
    }
    model.allDifferentExcept0(allPieces.toArray(IntVar[]::new)).post();
    IntVar s = total(sawn, 500);
    IntVar d = total(imbalance, BIG - 1);
    IntVar b = total(bearing, BIG - 1);
    IntVar cost = model.intVar("cost", 0, 600_000_000);
    model.scalar(new IntVar[] {s, d, b}, new int[] {BIG * BIG, BIG, 1}, "=", cost).post();
    model.getSolver().setSearch(Search.domOverWDegSearch(decisions.toArray(IntVar[]::new)));
    model.getSolver().limitTime(seconds + "s");
    Solution best = model.getSolver().findOptimalSolution(cost, false);
    if (model.getSolver().isStopCriterionMet()) {
      throw new IllegalStateException("gave up");
    }
    return best == null
        ? null
        : new Pile.Cost(best.getIntVal(s) + fan.sawn(), best.getIntVal(d), best.getIntVal(b));
  }

  private IntVar total(List<IntVar> of, int most) {
    IntVar t = model.intVar(0, most);
    if (of.isEmpty()) {
      model.arithm(t, "=", 0).post();
    } else {
      model.sum(of.toArray(IntVar[]::new), "=", t).post();
    }
    return t;
  }

  /** Where a line at a foot on the dividing line crosses the soffit line, or the top line. */
  private static int[] crossings(PlainFan side, int last, boolean top, boolean end) {
    double half = end ? 0 : side.joint() / 2.0;
    double factor = top == side.onTop() ? 1 : top ? side.growth() : 1 / side.growth();
    return IntStream.rangeClosed(0, last)
        .map(f -> factor == 1 ? f : (int) Math.floor((f + half) * factor - half + 0.5))
        .toArray();
  }

  private IntVar[] side(PlainFan side) {
    int last = (int) side.lastEnd();
    int joint = (int) side.joint();
    int min = (int) head.min();
    int max = (int) Math.min(head.max(), longest);
    int most = Math.max(0, (last - (int) side.start()) / (min + joint));
    int[] soffit = crossings(side, last, false, false);
    int[] top = crossings(side, last, true, false);
    int[] endTop = crossings(side, last, true, true);
    int[] stands =
        IntStream.range(0, last + 1)
            .map(
                f ->
                    soffit[f] + joint <= side.jamb() - side.clear()
                            || soffit[f] >= side.jamb() + side.clear()
                        ? 1
                        : 0)
            .toArray();
    IntVar[] width = new IntVar[most];
    IntVar[] foot = new IntVar[most + 1];
    BoolVar[] there = new BoolVar[most + 1];
    foot[0] = model.intVar((int) side.start());
    for (int i = 0; i < most; i++) {
      width[i] = model.intVar(0, max);
      foot[i + 1] = model.intVar(0, last);
      there[i] = model.boolVar();
      decisions.add(width[i]);
    }
    there[most] = model.boolVar(false);
    for (int i = 0; i < most; i++) {
      model.ifThenElse(there[i], model.arithm(width[i], ">=", min), model.arithm(width[i], "=", 0));
      IntVar step = model.intVar(0, max + joint);
      model.scalar(new IntVar[] {width[i], there[i]}, new int[] {1, joint}, "=", step).post();
      model.arithm(foot[i], "+", step, "=", foot[i + 1]).post();
      model.arithm(there[i + 1], "<=", there[i]).post();
      BoolVar stand = model.boolVar();
      model.element(stand, stands, foot[i + 1], 0).post();
      model.ifThen(there[i + 1], model.arithm(stand, "=", 1));
      if (head.jump() < longest) {
        model.ifThen(
            there[i + 1],
            i + 1 < most
                ? model.distance(width[i], width[i + 1], "<", (int) head.jump() + 1)
                : model.trueConstraint());
      }
      IntVar from = looked(soffit, foot[i]);
      IntVar to = model.intVar(0, 10_000);
      IntVar on = looked(top, foot[i + 1]);
      IntVar end = looked(endTop, foot[i + 1]);
      model.ifThenElse(there[i + 1], model.arithm(to, "=", on), model.arithm(to, "=", end));
      for (int c = 0; c < head.copies(); c++) {
        piece(there[i], from, to, joint);
      }
    }
    end(side, foot, there, most, last);
    return width;
  }

  private void end(PlainFan side, IntVar[] foot, BoolVar[] there, int most, int last) {
    int each = head.eachSide();
    if (most == 0 || each > most) {
      model.falseConstraint().post();
      return;
    }
    model.arithm(there[Math.max(1, each) - 1], "=", 1).post();
    if (each > 0) {
      model.arithm(there[each], "=", 0).post();
    }
    model.arithm(foot[most], ">=", (int) side.firstEnd()).post();
    IntVar off = model.intVar(0, last);
    model.distance(foot[most], model.intVar((int) side.target()), "=", off).post();
    bearing.add(model.mul(off, head.copies()));
  }

  private IntVar looked(int[] table, IntVar at) {
    IntVar value = model.intVar(IntStream.of(table).min().orElse(0), 10_000);
    model.element(value, table, at, 0).post();
    return value;
  }

  private void piece(BoolVar there, IntVar from, IntVar to, int joint) {
    int[] allowed =
        IntStream.range(0, usable.length)
            .filter(p -> p == 0 || pile.pieces().get(p - 1).fits().get(0))
            .toArray();
    IntVar piece = model.intVar(allowed);
    allPieces.add(piece);
    decisions.add(piece);
    model.ifOnlyIf(model.arithm(there, "=", 1), model.arithm(piece, ">", 0));
    IntVar length = looked(usable, piece);
    IntVar off = model.intVar(0, longest);
    IntVar left = model.intVar(-10_000, longest);
    // usable − (top − soffit − joint)
    model.scalar(new IntVar[] {length, to, from}, new int[] {1, -1, 1}, "=", left).post();
    model.ifThenElse(there, model.arithm(off, "-", left, "=", joint), model.arithm(off, "=", 0));
    sawn.add(off);
  }
}

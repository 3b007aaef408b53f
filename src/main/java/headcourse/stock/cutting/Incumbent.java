package headcourse.stock.cutting;

/** The best plan known, what no plan has less of, and what a better one must do. */
final class Incumbent {
  private Packing best;
  private Objective objective;
  private long bound;

  /**
   * @param what the component of the cost that is to be less
   * @param best the best plan yet
   * @param bound no plan has less of it
   */
  Incumbent(Cost.Component what, Packing best, long bound) {
    this.best = best;
    this.objective = Objective.below(what, best.cost());
    this.bound = bound;
  }

  Packing best() {
    return best;
  }

  Objective objective() {
    return objective;
  }

  long bound() {
    return bound;
  }

  boolean proved() {
    return objective.under() <= bound;
  }

  /** Takes a plan if it is better. */
  void take(Packing plan) {
    if (plan.cost().compareTo(best.cost()) < 0) {
      best = plan;
      objective = Objective.below(objective.what(), best.cost());
    }
  }

  /** No plan has less than this; nor is more of it proved than the best plan has. */
  void raise(long to) {
    bound = Math.max(bound, Math.min(to, objective.under()));
  }
}

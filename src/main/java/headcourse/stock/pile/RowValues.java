package headcourse.stock.pile;

/** The least that each node of a row's graph costs with given prices. */
final class RowValues {
  private final RowGraph graph;
  private final int copies;
  private final long[] value;
  private long[] cost = {};
  private long[] width = {};
  private long over;
  private long scale;

  RowValues(RowGraph graph, int copies) {
    this.graph = graph;
    this.copies = copies;
    this.value = new long[graph.size()];
  }

  RowGraph graph() {
    return graph;
  }

  /**
   * Settles what each node costs.
   *
   * @param cost by piece: what a stone costs whose shortest piece it is
   * @param width by stone of the body, then the end stone: what a tick of its width costs
   * @param scale what a tick sawn off costs
   */
  void settle(long[] cost, long[] width, long scale) {
    this.cost = cost;
    this.scale = scale;
    this.width = width.clone();
    long most = 0;
    for (int i = 0; i < width.length; i++) {
      this.width[i] *= copies;
      most = Math.max(most, this.width[i]);
    }
    over = most;
    for (int i = graph.size() - 1; i >= 0; i--) {
      long best = of(graph.skipped(i));
      int b = graph.taken(i, false);
      if (b != RowGraph.NONE) {
        best = Math.min(best, cost[graph.unit(i)] + more(i, false) + of(b));
      }
      int e = graph.taken(i, true);
      if (e != RowGraph.NONE) {
        best = Math.min(best, cost[graph.unit(i)] + more(i, true) + of(e));
      }
      value[i] = Math.min(best, RowGraph.NEVER);
    }
  }

  /** What the width of the stone costs that is given at a node. */
  long more(int node, boolean end) {
    int k = end ? width.length - 1 : graph.stones(node);
    return width[k] * graph.cover(node, end) - over * graph.over(node, end);
  }

  /** The least that the stones still to come cost, less what the row takes of the blanks. */
  long of(int node) {
    if (node >= 0) {
      return value[node];
    }
    if (node == RowGraph.NONE) {
      return RowGraph.NEVER;
    }
    long need = graph.need(node);
    long all = graph.all(node);
    return Math.min(ended(need, all), ended(graph.leastNeed(), all));
  }

  private long ended(long need, long all) {
    return -scale * copies * need - over * (all - need);
  }

  /**
   * Follows the cheapest row.
   *
   * @param count by piece: counts those that stones begin with
   * @param widths by stone: what its width counts for
   */
  void follow(int[] count, double[] widths) {
    int i = graph.root();
    long spare = 0;
    while (i >= 0) {
      int u = graph.unit(i);
      if (value[i] == of(graph.skipped(i))) {
        i = graph.skipped(i);
        continue;
      }
      count[u]++;
      int b = graph.taken(i, false);
      boolean end = b == RowGraph.NONE || value[i] != cost[u] + more(i, false) + of(b);
      widths[end ? widths.length - 1 : graph.stones(i)] += graph.cover(i, end);
      spare += graph.over(i, end);
      i = graph.taken(i, end);
    }
    long need = graph.need(i);
    long all = graph.all(i);
    spare += all - (ended(need, all) <= ended(graph.leastNeed(), all) ? need : graph.leastNeed());
    for (int k = 0; k < width.length; k++) {
      if (over > 0 && width[k] == over) {
        widths[k] -= spare;
        break;
      }
    }
  }

  /** What it all costs. */
  long root() {
    return of(graph.root());
  }
}

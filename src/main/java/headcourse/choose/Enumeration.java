package headcourse.choose;

import headcourse.job.Job;
import headcourse.layout.Arrangement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All heads that keep what the job asks, over the grid and over all that varies; and of these the
 * ones that no other of the same look outdoes.
 *
 * @param all how many there are
 * @param kept those that none outdoes, with their blanks, in no order
 * @param refused why some combinations come to nothing
 */
record Enumeration(int all, List<Kept> kept, List<String> refused) {
  /** So many plans are made at once, though one may turn out to rule out another. */
  private static final int AHEAD = 4;

  /** A head that none outdoes, and the blanks it takes. */
  record Kept(Candidate candidate, int blanks) {}

  /** A head with its merit; whether tolerances alone may spoil an end is asked where it matters. */
  private static final class Weighed {
    private final Candidate candidate;
    private final Merit merit;
    private Boolean stackUp;

    Weighed(Candidate candidate) {
      this.candidate = candidate;
      this.merit = Merit.of(candidate);
    }

    boolean stackUp() {
      if (stackUp == null) {
        stackUp = candidate.stackUp();
      }
      return stackUp;
    }

    /** Whether another is no worse, blanks apart. */
    boolean metBy(Weighed o) {
      return o.merit.noWorse(merit) && (!o.stackUp() || stackUp());
    }

    /** Whether another, no worse, is better in one, blanks apart. */
    boolean bettered(Weighed o) {
      return o.merit.betterInOne(merit) || stackUp() && !o.stackUp();
    }
  }

  /** Those of an opening of a job that nothing is chosen in yet. */
  static Enumeration of(Job base, int opening) {
    Combinations combinations = new Combinations(base, opening);
    Map<List<Object>, Candidate> all = new LinkedHashMap<>();
    List<String> refused = new ArrayList<>(combinations.refused());
    Map<List<Object>, Boolean> some = new LinkedHashMap<>();
    List<Combination> read = combinations.read();
    List<List<Arrangement>> each = read.parallelStream().map(Combination::arrangements).toList();
    for (int i = 0; i < read.size(); i++) {
      Combination c = read.get(i);
      List<Arrangement> arrangements = each.get(i);
      some.merge(c.look().seen(), !arrangements.isEmpty(), Boolean::logicalOr);
      for (Arrangement a : arrangements) {
        Candidate candidate = new Candidate(c, a);
        all.putIfAbsent(candidate.same(), candidate);
      }
    }
    Map<Look, List<Weighed>> looks = new LinkedHashMap<>();
    for (Candidate c : all.values()) {
      looks.computeIfAbsent(c.combination().look(), l -> new ArrayList<>()).add(new Weighed(c));
    }
    List<Kept> kept = new ArrayList<>();
    looks.values().forEach(l -> kept.addAll(best(l)));
    for (Combination c : read) {
      if (Boolean.FALSE.equals(some.put(c.look().seen(), true))) {
        c.refusal().ifPresent(refused::add);
      }
    }
    return new Enumeration(all.size(), kept, List.copyOf(refused));
  }

  /**
   * What none outdoes. Whatever outdoes a head comes before it, or beside it in all but blanks and
   * stack-up, so one pass does; blanks are planned only where the least that may be leaves a doubt.
   */
  private static List<Kept> best(List<Weighed> all) {
    List<Weighed> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing((Weighed w) -> w.merit, Merit::order));
    List<Weighed> kept = new ArrayList<>();
    List<Integer> blanks = new ArrayList<>();
    Map<Weighed, Integer> ahead = new IdentityHashMap<>();
    for (int at = 0; at < sorted.size(); at++) {
      Weighed w = sorted.get(at);
      int enough = enough(w, kept, blanks);
      if (enough < Integer.MAX_VALUE && BlankCount.least(w.candidate) >= enough) {
        continue;
      }
      if (!ahead.containsKey(w)) {
        plan(sorted.subList(at, sorted.size()), kept, blanks, ahead);
      }
      int own = ahead.get(w);
      if (own >= enough) {
        continue;
      }
      for (int i = kept.size() - 1; i >= 0; i--) {
        Weighed k = kept.get(i);
        boolean alike = w.metBy(k) && k.metBy(w);
        if (alike && blanks.get(i) > own) {
          kept.remove(i);
          blanks.remove(i);
        }
      }
      kept.add(w);
      blanks.add(own);
    }
    List<Kept> out = new ArrayList<>();
    for (int i = 0; i < kept.size(); i++) {
      out.add(new Kept(kept.get(i).candidate, blanks.get(i)));
    }
    return out;
  }

  /** From so many blanks on it is outdone by what is kept. */
  private static int enough(Weighed w, List<Weighed> kept, List<Integer> blanks) {
    int enough = Integer.MAX_VALUE;
    for (int i = 0; i < kept.size(); i++) {
      Weighed k = kept.get(i);
      if (w.metBy(k)) {
        // Alike in all else, it takes more blanks to be outdone.
        enough = Math.min(enough, blanks.get(i) + (w.bettered(k) ? 0 : 1));
      }
    }
    return enough;
  }

  /** Plans the next few that nothing kept so far rules out, side by side. */
  private static void plan(
      List<Weighed> next, List<Weighed> kept, List<Integer> blanks, Map<Weighed, Integer> ahead) {
    List<Weighed> some =
        next.stream()
            .filter(w -> BlankCount.least(w.candidate) < enough(w, kept, blanks))
            .limit(AHEAD)
            .toList();
    List<Integer> planned =
        some.parallelStream().map(w -> BlankCount.planned(w.candidate)).toList();
    for (int i = 0; i < some.size(); i++) {
      ahead.put(some.get(i), planned.get(i));
    }
  }
}

package headcourse.choose;

import headcourse.job.Job;
import headcourse.layout.Arrangement;
import java.util.ArrayList;
import java.util.Comparator;
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
  /** A head that none outdoes, and the blanks it takes. */
  record Kept(Candidate candidate, int blanks) {}

  private record Weighed(Candidate candidate, Merit merit) {}

  /** Those of an opening of a job that nothing is chosen in yet. */
  static Enumeration of(Job base, int opening) {
    Combinations combinations = new Combinations(base, opening);
    Map<List<Object>, Candidate> all = new LinkedHashMap<>();
    for (Combination c : combinations.read()) {
      for (Arrangement a : c.arrangements()) {
        Candidate candidate = new Candidate(c, a);
        all.putIfAbsent(candidate.same(), candidate);
      }
    }
    Map<Look, List<Weighed>> looks = new LinkedHashMap<>();
    for (Candidate c : all.values()) {
      looks
          .computeIfAbsent(c.combination().look(), l -> new ArrayList<>())
          .add(new Weighed(c, Merit.of(c)));
    }
    List<Kept> kept = new ArrayList<>();
    looks.values().forEach(l -> kept.addAll(best(l)));
    return new Enumeration(all.size(), kept, combinations.refused());
  }

  /**
   * What none outdoes. Whatever outdoes a head comes before it, or beside it in all but blanks, so
   * one pass does; blanks are planned only where the least that may be leaves a doubt.
   */
  private static List<Kept> best(List<Weighed> all) {
    List<Weighed> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(Weighed::merit, Merit::order));
    List<Weighed> kept = new ArrayList<>();
    List<Integer> blanks = new ArrayList<>();
    for (Weighed w : sorted) {
      int known = -1;
      boolean outdone = false;
      for (int i = 0; i < kept.size() && !outdone; i++) {
        Merit m = kept.get(i).merit();
        if (m.noWorse(w.merit())) {
          // Alike in all else, it takes more blanks to be outdone.
          int enough = blanks.get(i) + (m.betterInOne(w.merit()) ? 0 : 1);
          if (known < 0 && BlankCount.least(w.candidate()) >= enough) {
            outdone = true;
          } else {
            known = known < 0 ? BlankCount.planned(w.candidate()) : known;
            outdone = known >= enough;
          }
        }
      }
      if (outdone) {
        continue;
      }
      int own = known < 0 ? BlankCount.planned(w.candidate()) : known;
      for (int i = kept.size() - 1; i >= 0; i--) {
        boolean alike = kept.get(i).merit().noWorse(w.merit()) && w.merit().noWorse(kept.get(i).merit());
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
      out.add(new Kept(kept.get(i).candidate(), blanks.get(i)));
    }
    return out;
  }
}

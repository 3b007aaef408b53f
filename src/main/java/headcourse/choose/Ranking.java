package headcourse.choose;

import headcourse.job.Job;
import headcourse.job.Opening;
import headcourse.layout.HeadLayout;
import headcourse.units.Length;
import headcourse.work.ShopWork;
import headcourse.work.WorkUp;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Puts heads in their order and picks those that are pictured. To work a head out takes long, so
 * only as many are as may be pictured: in the order of what is known beforehand, one of each that
 * look unlike, until twelve are found good.
 */
final class Ranking {
  /** No more heads than this are worked out. */
  private static final int MOST = 48;

  /** Of each shape and rhythm so many are, so that unlike ones can be picked. */
  private static final int EACH = 2;

  private final Job base;
  private final int number;
  private final Enumeration found;
  private final List<Choice> sketched = new ArrayList<>();
  private final Map<Choice, List<Object>> pictures = new IdentityHashMap<>();
  private final Map<Choice, Choice> worked = new IdentityHashMap<>();

  Ranking(Job base, int number, Enumeration found) {
    this.base = base;
    this.number = number;
    this.found = found;
    for (Enumeration.Kept k : found.kept()) {
      Choice c = sketch(k);
      sketched.add(c);
      pictures.put(c, k.candidate().picture());
    }
    sketched.sort(Criterion::sketched);
  }

  private static Choice sketch(Enumeration.Kept kept) {
    Candidate c = kept.candidate();
    HeadLayout head = c.arrangement().head().get();
    return new Choice(
        "",
        c.combination().look(),
        c.settings(),
        c.arrangement().left(),
        c.arrangement().right(),
        c.mean(),
        c.arrangement().key(),
        c.proportion(),
        c.outside(),
        c.arrangement().shortfall(),
        c.arrangement().lap(),
        new Length(c.off() / c.arrangement().stones()),
        kept.blanks(),
        head,
        c.stackUp(),
        Optional.empty());
  }

  Choices choices() {
    workOut();
    List<Choice> ordered = new ArrayList<>(worked.values());
    ordered.sort(Criterion::order);
    boolean any = ordered.stream().anyMatch(c -> !c.faulty());
    List<Choice> offered = any ? ordered.stream().filter(c -> !c.faulty()).toList() : ordered;
    List<Choice> pictured = pick(offered);
    List<Choice> lettered = new ArrayList<>();
    for (Choice c : pictured) {
      lettered.add(c.lettered(Choices.letter(lettered.size())));
    }
    List<Choice> rest = new ArrayList<>();
    int faulty = 0;
    Set<String> faults = new TreeSet<>();
    for (Choice s : sketched) {
      Choice w = worked.get(s);
      if (w != null && any && w.faulty()) {
        faulty++;
        faults.addAll(w.faults());
      } else if (w == null || pictured.stream().noneMatch(p -> p == w)) {
        Choice c = w == null ? s : w;
        rest.add(c.lettered(Choices.letter(lettered.size() + rest.size())));
      }
    }
    Opening opening = base.openings().get(number);
    return new Choices(
        base, opening, lettered, rest, found.all(), faulty, List.copyOf(faults), found.refused());
  }

  /** One for each picture, the first of them; two of another shape or rhythm than the first. */
  private List<Choice> pick(List<Choice> ordered) {
    Map<List<Object>, Choice> first = new LinkedHashMap<>();
    for (Choice c : ordered) {
      first.putIfAbsent(picture(c), c);
    }
    List<Choice> all = new ArrayList<>(first.values());
    List<Choice> picked = new ArrayList<>(all.subList(0, Math.min(Choices.PICTURED, all.size())));
    if (picked.isEmpty()) {
      return picked;
    }
    Look look = picked.get(0).look();
    List<Choice> unlike = all.stream().filter(c -> !c.look().like(look)).toList();
    for (Choice u : unlike.subList(0, Math.min(Choices.UNLIKE, unlike.size()))) {
      if (!picked.contains(u)) {
        for (int i = picked.size() - 1; i >= 0; i--) {
          if (picked.get(i).look().like(look)) {
            picked.remove(i);
            break;
          }
        }
        picked.add(u);
      }
    }
    picked.sort(Criterion::order);
    return picked;
  }

  private List<Object> picture(Choice done) {
    for (Map.Entry<Choice, Choice> e : worked.entrySet()) {
      if (e.getValue() == done) {
        return pictures.get(e.getKey());
      }
    }
    throw new IllegalStateException("not worked out: " + done.settings().text());
  }

  private void workOut() {
    Set<Choice> now = new LinkedHashSet<>();
    Map<List<Object>, Integer> looks = new LinkedHashMap<>();
    Set<List<Object>> seen = new LinkedHashSet<>();
    for (Choice c : sketched) {
      List<Object> look = List.of(c.look().shape(), c.look().rhythm());
      int of = looks.merge(look, 1, Integer::sum);
      if ((seen.size() < Choices.PICTURED || of <= EACH) && seen.add(pictures.get(c))) {
        now.add(c);
      }
    }
    workOut(now);
    while (good() < Choices.PICTURED && worked.size() < MOST) {
      List<Choice> more = next();
      if (more.isEmpty()) {
        return;
      }
      workOut(more);
    }
  }

  /** The next few that may be good and whose picture no good head has yet. */
  private List<Choice> next() {
    Set<List<Object>> settled = new LinkedHashSet<>();
    worked.forEach(
        (s, w) -> {
          if (good(w)) {
            settled.add(pictures.get(s));
          }
        });
    return sketched.stream()
        .filter(c -> !c.stackUp() && !worked.containsKey(c))
        .filter(c -> !settled.contains(pictures.get(c)))
        .limit(4)
        .toList();
  }

  private long good() {
    return worked.entrySet().stream()
        .filter(e -> good(e.getValue()))
        .map(e -> pictures.get(e.getKey()))
        .distinct()
        .count();
  }

  private static boolean good(Choice c) {
    return !c.faulty() && !c.stackUp() && c.landing();
  }

  private void workOut(Collection<Choice> some) {
    List<Choice> list = List.copyOf(some);
    List<Choice> done = list.parallelStream().map(this::workedOut).toList();
    for (int i = 0; i < list.size(); i++) {
      worked.put(list.get(i), done.get(i));
    }
  }

  /** As it is when the job with its settings is drawn, the opening alone. */
  private Choice workedOut(Choice c) {
    String path = base.openings().get(number).path();
    Job job =
        base.spans()
            .rewriting()
            .with(c.settings().changes(path))
            .value()
            .orElseThrow(() -> new IllegalStateException("can't be read: " + c.settings().text()));
    ShopWork work =
        WorkUp.compared(job.alone(number))
            .value()
            .orElseThrow(() -> new IllegalStateException("can't be set: " + c.settings().text()));
    return c.worked(work);
  }
}

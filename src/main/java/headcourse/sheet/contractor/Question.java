package headcourse.sheet.contractor;

import headcourse.bench.HeadWork;
import headcourse.bench.Notch;
import headcourse.bench.PropFinder;
import headcourse.job.Answers;
import headcourse.job.Answers.Lintel;
import headcourse.job.Backing;
import headcourse.sheet.Amounts;
import headcourse.sheet.Holds;
import headcourse.sheet.SheetContext;
import headcourse.sheet.section.BackingBands;
import headcourse.units.Length;
import headcourse.units.Limit;
import java.util.List;

/**
 * What the contractor is asked: each with the job's answer, or with what follows until he gives it.
 */
enum Question {
  /** Kind and size of the lintel. */
  LINTEL {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      String name = a.lintel().name();
      return name.isEmpty() ? told(false, c.say("ask.lintel-open")) : told(true, name);
    }
  },
  /** How far it bears beyond the jambs. */
  BEARING {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      Length reach = Length.mm(Math.max(0, new HeadLoads(c, head).beyond()));
      String far = Limit.LEAST.withUnit(c.format(), reach);
      Length given = a.lintel().bearing();
      if (given == null) {
        return told(
            false, reach.isZero() ? c.say("ask.bearing-none") : c.say("ask.bearing-open", far));
      }
      String said = c.format().withUnit(given);
      return given.compareTo(reach) < 0
          ? told(true, c.say("ask.bearing-short", said, far))
          : told(true, c.say("ask.bearing-given", said));
    }
  },
  /** What it bends by before the stones go up. */
  BEFORE {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      Length given = a.lintel().before();
      return given == null
          ? told(false, c.say("ask.before-open", c.format().withUnit(c.job().wall().bed())))
          : told(true, c.say("ask.before-given", c.format().withUnit(given)));
    }
  },
  /** What it bends by after that. */
  AFTER {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      Length given = a.lintel().after();
      boolean closes = c.job().setting().dry() && !head.layout().curved();
      double bends = given == null ? head.layout().opening().width().mm() / 600 : given.mm();
      Length closing = Length.mm(bends <= 0 ? 0 : new HeadLoads(c, head).closes(bends));
      String by = Limit.LEAST.withUnit(c.format(), closing);
      if (given == null) {
        return told(false, closes ? c.say("ask.after-open", by) : c.say("ask.after-open-mortar"));
      }
      String said = c.format().withUnit(given);
      return told(true, closes ? c.say("ask.after-given", said, by) : said);
    }
  },
  /** What is behind each screw. */
  BEHIND {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      List<Notch> screws = new HeadLoads(c, head).screws();
      if (!BackingBands.said(c.job().wall())) {
        return told(false, c.say("ask.behind-open", screws.size()));
      }
      StringBuilder all = new StringBuilder();
      for (Backing b : c.job().wall().backing()) {
        String name = c.say(w -> Holds.name(w, b));
        String to = b.to() == null ? "" : c.format().withUnit(b.to());
        all.append(all.isEmpty() ? "" : "; ");
        all.append(
            b.to() == null ? c.say("ask.behind-above", name) : c.say("ask.behind-to", name, to));
      }
      return told(true, all.toString());
    }
  },
  /** Where the flashing lies. */
  FLASHING {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      HeadLoads loads = new HeadLoads(c, head);
      int all = loads.screws().size();
      Answers.Flashing f = a.flashing();
      return f == null
          ? told(false, c.say("ask.flashing-open", all))
          : told(
              true,
              c.say(
                  "ask.flashing-given",
                  c.format().withUnit(f.from()),
                  c.format().withUnit(f.to()),
                  loads.through(f),
                  all));
    }
  },
  /** How crossings of the weather barrier are sealed. */
  BARRIER {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      int all = new HeadLoads(c, head).screws().size();
      return a.barrier().isEmpty()
          ? told(false, c.say("ask.barrier-open", all))
          : told(true, c.say("ask.barrier-given", a.barrier(), all));
    }
  },
  /** Who props. */
  PROPS {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      if (!a.props().isEmpty()) {
        return told(true, a.props());
      }
      Amounts amounts = new Amounts(c.job().units());
      return PropFinder.find(c.job(), head)
          .map(p -> told(false, c.say("ask.props-open", p.posts(), amounts.massAtMost(p.postKg()))))
          .orElseGet(() -> told(false, c.say("ask.props-none")));
    }
  },
  /** Whether the lintel is designed for the head. */
  LOAD {
    @Override
    Said said(SheetContext c, HeadWork head, Answers a) {
      Amounts amounts = new Amounts(c.job().units());
      double kgPerM = new HeadLoads(c, head).kgPerM();
      String load = amounts.massPerLength(kgPerM);
      Lintel l = a.lintel();
      if (Double.isNaN(l.allows())) {
        return told(false, c.say("ask.load-open", load));
      }
      String key = l.allows() < kgPerM ? "ask.load-short" : "ask.load-given";
      return told(true, c.say(key, load, amounts.massPerLength(l.allows())));
    }
  };

  /**
   * What is printed beside a question.
   *
   * @param answered whether the job has the answer
   * @param text the answer, or what follows until it is there
   */
  record Said(boolean answered, String text) {}

  private static Said told(boolean answered, String text) {
    return new Said(answered, text);
  }

  /** What is said of a head. */
  abstract Said said(SheetContext c, HeadWork head, Answers a);

  /** The key of its words. */
  String key() {
    return "ask." + name().toLowerCase(java.util.Locale.ROOT);
  }
}

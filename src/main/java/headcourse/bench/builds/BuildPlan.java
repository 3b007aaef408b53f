package headcourse.bench.builds;

/**
 * A head as it is built.
 *
 * @param keyed whether it has a key; else both sides begin half a joint from the centre line
 * @param keySetting saw setting of the key, or {@link BuildSide#KNOWN}
 * @param settings how many saw settings there are
 * @param first one side
 * @param second the other
 * @param errors how far off things are
 * @param mortar width of a mortar joint; negative for a dry head
 * @param mostJoint the most that a mortar joint may be off its width
 * @param clear least distance of a joint from the jamb line
 * @param allowed what an edge may be off its mark at a check before anything is done
 */
public record BuildPlan(
    boolean keyed,
    int keySetting,
    int settings,
    BuildSide first,
    BuildSide second,
    Errors errors,
    double mortar,
    double mostJoint,
    double clear,
    double allowed) {
  /** Whether the joints are dry. */
  boolean dry() {
    return mortar < 0;
  }

  /** A number made of all others, for a seed: the same head is built the same. */
  long digest() {
    Digest d = new Digest();
    d.add(keyed ? 1 : 0).add(keySetting).add(settings);
    side(d, first);
    side(d, second);
    d.add(errors.cut()).add(errors.fence()).add(errors.joint());
    d.add(errors.read()).add(errors.key()).add(errors.site());
    d.add(mortar).add(mostJoint).add(clear).add(allowed);
    return d.value;
  }

  private static void side(Digest d, BuildSide s) {
    d.add(s.keyEdge()).add(s.stones().size()).add(s.checks().size());
    for (BuildSide.Stone t : s.stones()) {
      d.add(t.inner()).add(t.outer()).add(t.setting());
    }
    for (BuildSide.Check c : s.checks()) {
      d.add(c.after()).add(c.trims()).add(c.opens());
    }
    d.add(s.jamb()).add(s.least()).add(s.most()).add(s.closes() ? 1 : 0);
  }

  private static final class Digest {
    private long value = 0x6865616463727365L;

    Digest add(double number) {
      // Adding nought makes one of the two noughts.
      value = SplitMix.mix(value + SplitMix.STEP ^ Double.doubleToLongBits(number + 0.0));
      return this;
    }
  }
}

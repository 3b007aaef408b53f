package headcourse.sheet.elevation;

import headcourse.drawing.Ink;
import headcourse.drawing.Mark;
import headcourse.sheet.elevation.StoneLabel.Manner;
import headcourse.sheet.elevation.StoneLabel.Style;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Finds how large the mark and the setting number of every stone can be set inside its outline. */
final class StoneLabels {
  /** Heights of capitals, largest first. */
  static final double[] HEIGHTS = {20, 14, 10, 7, 5, 3.5, 2.5};

  /**
   * What to write on a stone.
   *
   * @param face its outline on paper
   * @param mark its mark
   * @param order its setting number, or empty
   */
  record Text(StoneFace face, String mark, String order) {}

  /**
   * How a stone is labelled.
   *
   * @param label what is written, or null where nothing fits
   * @param place the number of the place on its face
   */
  record Setting(StoneLabel label, int place) {
    static final Setting NONE = new Setting(null, 0);

    /** Whether both mark and setting number are written. */
    boolean both() {
      return label != null && label.both();
    }

    /** What is drawn on the stone's face. */
    List<Mark> marks(StoneFace face) {
      return label == null ? List.of() : label.marks(face.place(place));
    }
  }

  private final Ink ink;
  private final List<Manner> manners;

  /**
   * Labels on paper that already has ink.
   *
   * @param ink outlines and screws
   * @param largest greatest height of capitals, mm
   * @param ordered whether stones have setting numbers
   */
  StoneLabels(Ink ink, double largest, boolean ordered) {
    this.ink = ink;
    this.manners = manners(largest, ordered);
  }

  // Upright with the number first, then turned, then small; the number is given up last.
  private static List<Manner> manners(double largest, boolean ordered) {
    List<Manner> manners = new ArrayList<>();
    for (double cap : HEIGHTS) {
      if (cap >= 3.5) {
        manners.add(new Manner(cap, ordered ? Style.RINGED : Style.MARK_ONLY));
        if (ordered) {
          manners.add(new Manner(cap, Style.STACKED));
        }
      }
    }
    Style turned = ordered ? Style.TURNED : Style.MARK_TURNED;
    manners.add(new Manner(5, turned));
    manners.add(new Manner(3.5, turned));
    manners.add(new Manner(2.5, ordered ? Style.STACKED : Style.MARK_ONLY));
    manners.add(new Manner(2.5, turned));
    if (ordered) {
      for (double cap : new double[] {5, 3.5, 2.5}) {
        manners.add(new Manner(cap, Style.MARK_ONLY));
        manners.add(new Manner(cap, Style.MARK_TURNED));
      }
    }
    manners.removeIf(m -> m.cap() > largest + 1e-9);
    return manners;
  }

  /** How to set each of some stones, all in the one largest manner that suits every one. */
  List<Setting> alike(List<Text> texts) {
    List<Stone> stones = new ArrayList<>();
    texts.forEach(t -> stones.add(new Stone(t)));
    List<Stone> asked = new ArrayList<>(stones);
    for (int m = 0; m < manners.size(); m++) {
      int i = 0;
      while (i < asked.size() && asked.get(i).fits(m)) {
        i++;
      }
      if (i == asked.size()) {
        int manner = m;
        return stones.stream().map(s -> s.setting(manner)).toList();
      }
      // Who had no room now is asked first the next time.
      Collections.swap(asked, 0, i);
    }
    // Not one manner for all: each as it can.
    return stones.stream().map(Stone::largest).toList();
  }

  /** How to set one stone, as large as it goes. */
  Setting one(Text text) {
    return new Stone(text).largest();
  }

  /** What has been found out about a stone. */
  private final class Stone {
    private final Text text;
    private final Setting[] tried = new Setting[manners.size()];

    private Stone(Text text) {
      this.text = text;
    }

    private Setting setting(int manner) {
      if (tried[manner] == null) {
        tried[manner] = tried(new StoneLabel(text.mark, text.order, manners.get(manner)));
      }
      return tried[manner];
    }

    private Setting tried(StoneLabel label) {
      StoneFace face = text.face;
      if (label.mayFit(face.box())) {
        for (int place = 0; place < StoneFace.PLACES; place++) {
          if (label.fits(face.box(), ink, face.place(place))) {
            return new Setting(label, place);
          }
        }
      }
      return Setting.NONE;
    }

    private boolean fits(int manner) {
      return setting(manner) != Setting.NONE;
    }

    private Setting largest() {
      for (int m = 0; m < manners.size(); m++) {
        if (fits(m)) {
          return setting(m);
        }
      }
      return Setting.NONE;
    }
  }
}

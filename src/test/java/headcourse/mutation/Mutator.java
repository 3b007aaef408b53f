package headcourse.mutation;

import headcourse.mutation.Tree.Fields;
import headcourse.mutation.Tree.Items;
import headcourse.mutation.Tree.Leaf;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Changes job files at the level of their values: what a careless hand or a hostile one would
 * write. Knows which keys stand where, and what was ever written there, from the files it is given.
 */
public final class Mutator {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  /** Values that break arithmetic, lengths, angles, words and texts. */
  private static final List<String> ODD =
      List.of(
          "0",
          "-1",
          "1",
          "-0",
          "2",
          "3",
          "1/64",
          "1/512",
          "8/32",
          "1/0",
          "0/5",
          "0.0001",
          "0.1",
          "1e3",
          "1e9",
          "1e-9",
          "1e400",
          "99",
          "560",
          "1000",
          "9999",
          "999999",
          "99999999999999",
          "NaN",
          ".inf",
          "-.inf",
          "none",
          "null",
          "~",
          "",
          " ",
          "yes",
          "true",
          "false",
          "off",
          "0.001 mm",
          "1 mm",
          "-5 mm",
          "4000 mm",
          "1 m",
          "12 m",
          "190 mm",
          "19 cm",
          "1/16\"",
          "16'",
          "2' 4 1/2\"",
          "2'-4 1/2\"",
          "7 15/16\"",
          "1000'",
          "½",
          "1 ½",
          "7,5",
          "٣",
          "１２",
          "0°",
          "0.1°",
          "45°",
          "60°",
          "70°",
          "89°",
          "89.99°",
          "90°",
          "91°",
          "180°",
          "-12°",
          "1/2 in 12",
          "12 in 12",
          "1000 in 1",
          "1:24",
          "1:0",
          "0:1",
          "1/8 per foot",
          "-2 per foot",
          "2 per foot",
          "1/2 in 4 per foot of span",
          "0 per foot",
          "é",
          "日本",
          "\u202Eabc",
          "🪨",
          "=1+1",
          "<b>&",
          "a\tb",
          "a\nb",
          "\u0000",
          "D1",
          "D1-R1",
          "D1-K",
          "C1#1",
          "C1#1/1",
          "L1",
          "[]",
          "{}",
          "{a: b}",
          "x".repeat(300),
          "..",
          "../..",
          "/etc/passwd",
          "a/b",
          "letter",
          "a4",
          "roll 24in",
          "soldier",
          "jack",
          "segmental",
          "semicircular",
          "three-centred",
          "elliptical",
          "pointed",
          "four-centred",
          "even",
          "graded",
          "mixed",
          "from-stock",
          "dry",
          "mortar",
          "returned",
          "mitred",
          "butted",
          "concentric",
          "level",
          "stepped",
          "en+es",
          "es",
          "in",
          "mm",
          "1/32",
          "0.5");

  private static final List<String> FACTORS =
      List.of("0", "-1", "0.001", "0.1", "0.5", "0.9", "1.01", "1.1", "1.5", "2", "3", "10", "100");

  private final List<Fields> seeds;

  /** For each key of a map, what maps stood there or what was written there in any file. */
  private final Map<String, List<Tree>> seen = new TreeMap<>();

  /** For each place, the keys that may stand there. */
  private final Map<String, List<String>> keys = new TreeMap<>();

  private Random random;
  private String kind = "";

  /** What was done, and what came of it. */
  public record Mutated(String kind, String text) {}

  /** One that knows what stands in some files. */
  public Mutator(List<String> files) {
    seeds = files.stream().map(Tree::read).filter(f -> f != null).toList();
    seeds.forEach(f -> learn("", f));
  }

  private void learn(String place, Tree t) {
    if (t instanceof Fields f) {
      for (int i = 0; i < f.keys.size(); i++) {
        String key = f.keys.get(i);
        List<String> known = keys.computeIfAbsent(place, p -> new ArrayList<>());
        if (!known.contains(key)) {
          known.add(key);
        }
        List<Tree> values = seen.computeIfAbsent(key, p -> new ArrayList<>());
        if (values.size() < 4000) {
          values.add(f.values.get(i));
        }
        learn(key, f.values.get(i));
      }
    } else if (t instanceof Items l) {
      l.items.forEach(i -> learn(place + "[]", i));
    }
  }

  /** A file for a seed; the same always. */
  public Mutated next(long seed) {
    random = new Random(seed * 0x9E3779B97F4A7C15L + 0x2545F491L);
    Fields root = seeds.get(random.nextInt(seeds.size())).copy();
    int changes = 1;
    while (changes < 6 && random.nextInt(5) < 2) {
      changes++;
    }
    String first = "";
    for (int i = 0; i < changes; i++) {
      change(root);
      first = first.isEmpty() ? kind : first;
    }
    if (random.nextInt(12) > 0 && !root.keys.contains("steps")) {
      // Most of the time of a search for the best; it ends the same way, only sooner.
      root.put("steps", new Leaf("20000"));
    }
    String text = Tree.write(root);
    if (random.nextInt(12) == 0) {
      text = scribble(text);
      first = "text";
    }
    return new Mutated(first, text);
  }

  private record Spot(String place, Fields in, int at) {}

  private List<Spot> spots(String place, Tree t, List<Spot> all) {
    if (t instanceof Fields f) {
      for (int i = 0; i < f.keys.size(); i++) {
        all.add(new Spot(place, f, i));
        spots(f.keys.get(i), f.values.get(i), all);
      }
    } else if (t instanceof Items l) {
      l.items.forEach(i -> spots(place + "[]", i, all));
    }
    return all;
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private void change(Fields root) {
    List<Spot> spots = spots("", root, new ArrayList<>());
    if (spots.isEmpty()) {
      root.put("units", new Leaf("in"));
      kind = "added";
      return;
    }
    Spot s = any(spots);
    Tree value = s.in.values.get(s.at);
    String key = s.in.keys.get(s.at);
    switch (random.nextInt(14)) {
      case 0, 1, 2 -> scale(spots);
      case 3, 4 -> {
        kind = "odd";
        leaf(spots).text = any(ODD);
      }
      case 5, 6, 7 -> {
        kind = "from elsewhere";
        s.in.values.set(s.at, any(seen.get(known(key))).copy());
      }
      case 8, 9, 10 -> {
        kind = "added";
        String other = any(keys.getOrDefault(s.place, List.of("units")));
        s.in.put(other, any(seen.get(known(other))).copy());
      }
      case 11 -> {
        kind = "deleted";
        s.in.keys.remove(s.at);
        s.in.values.remove(s.at);
      }
      case 12 -> structure(s, value, key);
      default -> swap(spots);
    }
  }

  private String known(String key) {
    return seen.containsKey(key) ? key : "units";
  }

  private Leaf leaf(List<Spot> spots) {
    List<Leaf> leaves = new ArrayList<>();
    for (Spot s : spots) {
      if (s.in.values.get(s.at) instanceof Leaf l) {
        leaves.add(l);
      } else if (s.in.values.get(s.at) instanceof Items i) {
        i.items.stream().filter(Leaf.class::isInstance).forEach(l -> leaves.add((Leaf) l));
      }
    }
    return leaves.isEmpty() ? new Leaf("") : any(leaves);
  }

  private void scale(List<Spot> spots) {
    kind = "scaled";
    for (int tries = 0; tries < 20; tries++) {
      Leaf l = leaf(spots);
      Matcher m = NUMBER.matcher(l.text);
      if (m.find()) {
        BigDecimal was = new BigDecimal(m.group());
        BigDecimal now =
            random.nextInt(4) == 0
                ? was.add(new BigDecimal(random.nextInt(33) - 16).divide(BigDecimal.valueOf(16)))
                : was.multiply(new BigDecimal(any(FACTORS)));
        l.text = m.replaceFirst(now.stripTrailingZeros().toPlainString());
        return;
      }
    }
  }

  private void structure(Spot s, Tree value, String key) {
    switch (random.nextInt(5)) {
      case 0 -> {
        kind = "key twice";
        s.in.keys.add(key);
        s.in.values.add(value.copy());
      }
      case 1 -> {
        kind = "key misspelt";
        s.in.keys.set(s.at, key.isEmpty() ? "x" : key.substring(1));
      }
      case 2 -> {
        kind = "wrong type";
        Items l = new Items();
        l.items.add(value);
        s.in.values.set(s.at, l);
      }
      case 3 -> {
        kind = "wrong type";
        s.in.values.set(s.at, value instanceof Leaf ? new Fields() : new Leaf(any(ODD)));
      }
      default -> {
        kind = "item twice";
        if (value instanceof Items l && !l.items.isEmpty() && l.items.size() < 40) {
          l.items.add(any(l.items).copy());
        } else if (value instanceof Items l) {
          l.items.clear();
        }
      }
    }
  }

  private void swap(List<Spot> spots) {
    kind = "swapped";
    Leaf a = leaf(spots);
    Leaf b = leaf(spots);
    String was = a.text;
    a.text = b.text;
    b.text = was;
  }

  private String scribble(String text) {
    StringBuilder s = new StringBuilder(text);
    int times = 1 + random.nextInt(3);
    for (int i = 0; i < times && s.length() > 2; i++) {
      int at = random.nextInt(s.length() - 1);
      switch (random.nextInt(5)) {
        case 0 -> s.deleteCharAt(at);
        case 1 -> s.insert(at, any(List.of("\t", "\"", "'", ":", "{", "]", "#", "&a", "*a", "\0")));
        case 2 -> s.setCharAt(at, (char) random.nextInt(0x3000));
        case 3 -> s.setLength(at);
        default -> {
          int end = Math.min(s.length(), at + 1 + random.nextInt(60));
          s.insert(at, s.substring(at, end));
        }
      }
    }
    return s.toString();
  }
}

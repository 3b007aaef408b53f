package headcourse.job.yaml;

import headcourse.job.HeadSpec;
import headcourse.job.Params;
import headcourse.job.ShapeDef;
import headcourse.units.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Reads {@code head:}, what is set over an opening. */
final class HeadReader {
  private HeadReader() {}

  static HeadSpec read(Section s, String mark, List<ShapeDef> shapes) {
    Reading in = s.in;
    List<String> names = shapes.stream().map(ShapeDef::name).toList();
    String name = s.word("shape", names, names.get(0));
    ShapeDef shape = shapes.stream().filter(d -> d.name().equals(name)).findFirst().orElseThrow();
    Length height = s.length("height", Range.of(1, 120).cut(), in.grid.snap(in.or(12, 300)));
    HeadSpec.Key key = KeyReader.read(s, name);
    HeadSpec.Stones stones = StonesReader.read(s.section("stones"), mark);
    HeadSpec.Bearing bearing = bearing(s.section("bearing"), name, s.has("bearing"));
    Length clear = s.length("clear", Range.NOT_NEGATIVE, in.or(1.5, 40));
    String soffit = s.word("soffit", List.of("returned", "mitred", "butted", "none"), "returned");
    Length seat = s.length("seat", Range.NOT_NEGATIVE, in.or(1, 25));
    Map<String, Object> params = new LinkedHashMap<>();
    for (ShapeDef.ParamDef def : shape.params()) {
      Item item = s.item(def.name());
      Object value = item == null ? null : ParamReader.read(item, def);
      if (value != null) {
        params.put(def.name(), value);
      }
    }
    if (!in.sound(s.at("shape"))) {
      // Whose keys they are is not known before the shape is.
      shapes.forEach(d -> d.params().forEach(p -> s.item(p.name())));
    }
    s.done(k -> elsewhere(k, name, shapes));
    return new HeadSpec(
        name,
        height,
        key,
        stones,
        bearing,
        clear,
        HeadSpec.Soffit.valueOf(soffit.toUpperCase(java.util.Locale.ROOT)),
        seat,
        new Params(params));
  }

  private static String elsewhere(String key, String shape, List<ShapeDef> shapes) {
    String owners =
        shapes.stream()
            .filter(d -> d.params().stream().anyMatch(p -> p.name().equals(key)))
            .map(ShapeDef::name)
            .collect(Collectors.joining(", "));
    return owners.isEmpty()
        ? null
        : "key "
            + Reading.quoted(key)
            + " is for shape "
            + owners
            + "; this head is "
            + shape
            + ", expected no such key";
  }

  private static HeadSpec.Bearing bearing(Section s, String shape, boolean given) {
    Reading in = s.in;
    boolean jack = shape.equals("jack") && !given;
    Length min = s.length("min", Range.NOT_NEGATIVE, null);
    Length max = s.length("max", Range.NOT_NEGATIVE, null);
    Length target = s.length("target", Range.NOT_NEGATIVE, null);
    // A default gives way to what the job says of the others.
    Length aim = target != null ? target : between(jack ? Length.ZERO : in.or(6, 150), min, max);
    min = min != null ? min : (jack ? Length.ZERO : in.or(4, 100)).min(aim);
    max = max != null ? max : in.or(8, 200).max(aim);
    order(in, s.path, min, aim, max);
    s.done();
    return new HeadSpec.Bearing(min, max, aim);
  }

  /** A value brought within limits, each of which may be open. */
  static Length between(Length v, Length min, Length max) {
    Length low = min == null ? v : v.max(min);
    return max == null ? low : low.min(max);
  }

  /** Refuses limits that leave nothing between them, and a target outside them. */
  static void order(Reading in, String path, Length min, Length target, Length max) {
    if (!in.sound(path + ".min", path + ".max", path + ".target")) {
      return;
    }
    if (min.compareTo(max) > 0) {
      in.error(
          path + ".min",
          "min " + in.say(min) + " is over max " + in.say(max) + "; expected min no more than max");
    } else if (target.compareTo(min) < 0 || target.compareTo(max) > 0) {
      in.error(
          path + ".target",
          "target "
              + in.say(target)
              + " lies outside; expected "
              + in.say(min)
              + " to "
              + in.say(max));
    }
  }
}

package headcourse.jar;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.IntToLongFunction;
import java.util.function.LongToIntFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Lambdas, method references and records of every kind, and what they come to. */
public final class Samples implements Callable<List<String>> {
  private final List<String> out = new ArrayList<>();
  private int field = 3;

  /** A class whose constructor is meant. */
  private static final class Inner {
    final long sum;

    private Inner(long a, int b) {
      sum = a + b;
    }

    private Inner(long a) {
      this(a, 1);
    }
  }

  /** An interface with a private method that a lambda calls. */
  private interface Private {
    String word();

    private String twice() {
      Supplier<String> s = () -> word() + word();
      return s.get();
    }

    default String shown() {
      return twice();
    }
  }

  /** A record with a name. */
  record Named(String name, int number) implements Comparable<Named> {
    @Override
    public int compareTo(Named o) {
      return Comparator.comparing(Named::name).thenComparingInt(Named::number).compare(this, o);
    }
  }

  /** A record of nothing. */
  record Nothing() {}

  /** A record with a component of every type. */
  record Everything(
      boolean a, byte b, char c, short d, int e, long f, float g, double h, String i, int[] j) {}

  private void say(Object o) {
    out.add(String.valueOf(o));
  }

  @Override
  public List<String> call() {
    captures();
    conversions();
    references();
    records();
    streams();
    return List.copyOf(out);
  }

  private void captures() {
    boolean a = true;
    byte b = 2;
    char c = 'c';
    short d = 4;
    int e = 5;
    long f = 6L << 40;
    float g = 7.5f;
    double h = 8.25;
    String i = "nine";
    int[] j = {10, 11};
    Supplier<String> all = () -> "" + a + b + c + d + e + f + g + h + i + j.length + field;
    say(all.get());
    field++;
    say(all.get());
    Supplier<Supplier<Supplier<String>>> nested = () -> () -> () -> i + f;
    say(nested.get().get().get());
    Supplier<Object> nothing = () -> null;
    say(nothing.get());
    Consumer<Object> void1 = this::say;
    void1.accept(h);
    Runnable run = () -> field += e;
    run.run();
    say(field);
    Consumer<List<String>> dropsResult = list -> list.add("dropped");
    dropsResult.accept(out);
    Function<Long, Boolean> drop =
        out.stream().map(String::length).map(Long::valueOf).toList()::contains;
    say(drop.apply(4L));
    Private p = () -> "ab";
    say(p.shown());
    Comparator<String> kept = (Comparator<String> & Serializable) (x, y) -> y.compareTo(x);
    say(Stream.of("a", "c", "b").sorted(kept).toList());
  }

  private void conversions() {
    IntToLongFunction widen = Math::abs;
    say(widen.applyAsLong(-4));
    LongToIntFunction hash = Long::hashCode;
    say(hash.applyAsInt(7L << 33));
    ToLongFunction<Integer> unboxAndWiden = Integer::intValue;
    say(unboxAndWiden.applyAsLong(12));
    ToDoubleFunction<Integer> toDouble = x -> x;
    say(toDouble.applyAsDouble(9));
    ToDoubleFunction<Long> exact = Long::longValue;
    say(exact.applyAsDouble(1L << 50));
    Function<Integer, Long> boxes = Samples::wide;
    say(boxes.apply(5));
    BinaryOperator<Integer> sum = Integer::sum;
    say(sum.apply(3, 4));
    BinaryOperator<Double> most = Math::max;
    say(most.apply(3.5, 4.5));
    IntPredicate even = n -> n % 2 == 0;
    say(even.negate().and(n -> n > 2).test(5));
    Predicate<Boolean> itself = Boolean::booleanValue;
    say(itself.test(false));
    IntFunction<Object> asObject = Integer::valueOf;
    say(asObject.apply(77));
    Function<Character, Object> character = Character::toUpperCase;
    say(character.apply('q'));
    DoubleUnaryOperator half = x -> x / 2;
    say(half.andThen(Math::sqrt).applyAsDouble(32));
    Function<Object, String> wider = Object::toString;
    say(wider.compose((Integer n) -> n + 1).apply(1));
    ToIntFunction<CharSequence> length = CharSequence::length;
    say(length.applyAsInt("three"));
    Supplier<Integer> late = this::late;
    say(late.get());
    Function<Byte, Integer> small = Byte::intValue;
    say(small.apply((byte) -3));
    BiFunction<Number, Number, Number> numbers = (x, y) -> x.intValue() + y.longValue();
    say(numbers.apply(1, 2.9));
  }

  private static long wide(long n) {
    return n * 3;
  }

  private int late() {
    return field * 2;
  }

  private static String several(String first, Object... rest) {
    return first + rest.length;
  }

  private void references() {
    BiFunction<Long, Integer, Inner> two = Inner::new;
    say(two.apply(5L, 6).sum);
    Function<Integer, Inner> one = Inner::new;
    say(one.apply(5).sum);
    IntFunction<String[]> array = String[]::new;
    say(array.apply(4).length);
    UnaryOperator<String> method = String::strip;
    say(method.apply("  x "));
    Function<String, String> bound = "pre-"::concat;
    say(bound.apply("fix"));
    BiFunction<String, Object, String> arity = Samples::several;
    say(arity.apply("v", "w"));
    Function<int[], int[]> copy = int[]::clone;
    say(copy.apply(new int[] {1, 2})[1]);
    Callable<List<String>> own = () -> List.copyOf(out.subList(0, 2));
    try {
      say(own.call());
    } catch (Exception e) {
      say(e);
    }
  }

  private void records() {
    Named n = new Named("key", 3);
    say(n);
    say(n.hashCode());
    say(n.equals(new Named("key", 3)));
    say(n.equals(new Named("key", 4)));
    say(n.equals(null));
    say(n.equals((Object) "key"));
    say(new Named(null, 0) + " " + new Named(null, 0).hashCode());
    say(new Named(null, 0).equals(new Named("", 0)));
    say(new Nothing() + " " + new Nothing().hashCode() + new Nothing().equals(new Nothing()));
    int[] same = {1};
    Everything all = all(0.0, 1.5f, same);
    say(all.toString().replaceAll("\\[I@[0-9a-f]+", "array"));
    say(all.equals(all(0.0, 1.5f, same)));
    say(all.equals(all(-0.0, 1.5f, same)));
    say(all.equals(all(0.0, 1.5f, new int[] {1})));
    say(all(Double.NaN, Float.NaN, same).equals(all(Double.NaN, Float.NaN, same)));
    say(all(2, Float.NaN, null).hashCode());
  }

  private static Everything all(double h, float g, int[] j) {
    return new Everything(true, (byte) -1, 'x', (short) 300, -5, 1L << 40, g, h, "i", j);
  }

  private void streams() {
    List<Named> some =
        IntStream.range(0, 9).mapToObj(i -> new Named("n" + i % 3, -i)).sorted().toList();
    say(some);
    say(some.stream().collect(Collectors.groupingBy(Named::name, Collectors.counting())).get("n1"));
    say(some.stream().mapToInt(Named::number).boxed().map(Integer::toHexString).toList());
    say(some.stream().map(Named::number).reduce(0, Integer::sum));
    say(some.stream().max(Comparator.comparingInt(Named::number)).map(Named::name).orElse("none"));
  }
}

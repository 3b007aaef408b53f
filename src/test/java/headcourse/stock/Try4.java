package headcourse.stock;

import java.lang.reflect.*;

public final class Try4 {
  public static void main(String[] a) throws Exception {
    Object t = FromStockTest.class.getDeclaredConstructor().newInstance();
    Method m = FromStockTest.class.getDeclaredMethod("severalOpeningsShareThePile");
    m.setAccessible(true);
    for (int i = 0; i < 2; i++) {
      long s = System.nanoTime();
      long c = java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      m.invoke(t);
      System.out.printf(
          "%.0f ms, cpu %.0f%n",
          (System.nanoTime() - s) / 1e6,
          (java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - c)
              / 1e6);
    }
  }
}

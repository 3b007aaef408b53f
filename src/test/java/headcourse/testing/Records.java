package headcourse.testing;

import java.lang.reflect.RecordComponent;

/** Copies records with a part changed, for tests that need a job a little different. */
public final class Records {
  private Records() {}

  /** The same record with another value of a part. */
  public static <R extends Record> R with(R record, String part, Object value) {
    RecordComponent[] parts = record.getClass().getRecordComponents();
    Object[] values = new Object[parts.length];
    Class<?>[] types = new Class<?>[parts.length];
    boolean found = false;
    try {
      for (int i = 0; i < parts.length; i++) {
        boolean here = parts[i].getName().equals(part);
        found |= here;
        values[i] = here ? value : parts[i].getAccessor().invoke(record);
        types[i] = parts[i].getType();
      }
      if (!found) {
        throw new IllegalArgumentException(record.getClass() + " has no " + part);
      }
      @SuppressWarnings("unchecked")
      R copy = (R) record.getClass().getDeclaredConstructor(types).newInstance(values);
      return copy;
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }
}

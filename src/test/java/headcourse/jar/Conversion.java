package headcourse.jar;

import java.util.Map;
import java.util.TreeMap;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.MethodNode;

/**
 * Makes a value on the stack one of another type: by a cast, by boxing or unboxing, by widening, as
 * {@link java.lang.invoke.LambdaMetafactory} allows them.
 */
final class Conversion {
  private static final Map<String, Type> UNBOXED = new TreeMap<>();
  private static final Map<Type, String> BOX = new java.util.HashMap<>();

  static {
    pair("Boolean", Type.BOOLEAN_TYPE);
    pair("Character", Type.CHAR_TYPE);
    pair("Byte", Type.BYTE_TYPE);
    pair("Short", Type.SHORT_TYPE);
    pair("Integer", Type.INT_TYPE);
    pair("Long", Type.LONG_TYPE);
    pair("Float", Type.FLOAT_TYPE);
    pair("Double", Type.DOUBLE_TYPE);
  }

  private Conversion() {}

  private static void pair(String name, Type plain) {
    UNBOXED.put("java/lang/" + name, plain);
    BOX.put(plain, "java/lang/" + name);
  }

  static boolean plain(Type t) {
    return BOX.containsKey(t);
  }

  /** Internal name of the class that boxes a plain type. */
  static String box(Type plain) {
    return BOX.get(plain);
  }

  private static Type unboxed(Type t) {
    return plain(t) ? null : UNBOXED.get(t.getInternalName());
  }

  /**
   * Converts an argument.
   *
   * @param from its type as declared
   * @param bound what it is known to be
   * @param to what is wanted
   */
  static void write(MethodNode m, Type from, Type bound, Type to) {
    if (plain(from)) {
      if (plain(to)) {
        widen(m, from, to);
      } else {
        wrap(m, from);
      }
    } else if (plain(to)) {
      Type value = unboxed(bound) == null ? to : unboxed(bound);
      cast(m, from, Type.getObjectType(box(value)));
      unwrap(m, value);
      widen(m, value, to);
    } else {
      cast(m, from, to);
    }
  }

  /**
   * Converts a result and returns it.
   *
   * @param from what there is
   * @param bound what the caller knows it to be
   * @param to the type declared
   */
  static void writeReturn(MethodNode m, Type from, Type bound, Type to) {
    if (to == Type.VOID_TYPE) {
      if (from.getSize() > 0) {
        m.visitInsn(from.getSize() == 1 ? Opcodes.POP : Opcodes.POP2);
      }
    } else if (plain(from) && !plain(to)) {
      Type value = unboxed(bound) == null ? from : unboxed(bound);
      widen(m, from, value);
      wrap(m, value);
    } else {
      write(m, from, from, to);
    }
    m.visitInsn(to.getOpcode(Opcodes.IRETURN));
  }

  private static void cast(MethodNode m, Type from, Type to) {
    if (!from.equals(to) && !to.getInternalName().equals("java/lang/Object")) {
      m.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
    }
  }

  private static void wrap(MethodNode m, Type plain) {
    String descriptor = Type.getMethodDescriptor(Type.getObjectType(box(plain)), plain);
    m.visitMethodInsn(Opcodes.INVOKESTATIC, box(plain), "valueOf", descriptor, false);
  }

  private static void unwrap(MethodNode m, Type plain) {
    String name = plain.getClassName() + "Value";
    m.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL, box(plain), name, Type.getMethodDescriptor(plain), false);
  }

  private static void widen(MethodNode m, Type from, Type to) {
    int a = Math.max(from.getSort(), Type.INT);
    int b = Math.max(to.getSort(), Type.INT);
    if (a == b) {
      return;
    }
    m.visitInsn(
        switch (a) {
          case Type.INT ->
              b == Type.LONG ? Opcodes.I2L : b == Type.FLOAT ? Opcodes.I2F : Opcodes.I2D;
          case Type.LONG -> b == Type.FLOAT ? Opcodes.L2F : Opcodes.L2D;
          case Type.FLOAT -> Opcodes.F2D;
          default -> throw new IllegalArgumentException(from + " is not widened to " + to);
        });
  }
}

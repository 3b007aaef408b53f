package headcourse.jar;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * One of the three methods that a record has by itself, written out as {@link
 * java.lang.runtime.ObjectMethods} makes it, component by component.
 */
final class RecordMethod {
  private static final String OBJECTS = "java/util/Objects";
  private static final String BUILDER = "java/lang/StringBuilder";

  private final ClassNode host;
  private final MethodNode m;
  private final List<Handle> components = new ArrayList<>();

  private RecordMethod(ClassNode host, MethodNode method, InvokeDynamicInsnNode site) {
    this.host = host;
    this.m = method;
    for (int i = 2; i < site.bsmArgs.length; i++) {
      components.add((Handle) site.bsmArgs[i]);
    }
  }

  /** Whether a site stands for such a method. */
  static boolean makes(InvokeDynamicInsnNode site) {
    return site.bsm.getOwner().equals("java/lang/runtime/ObjectMethods");
  }

  /** Writes it in place of what the method did. */
  static void write(ClassNode host, MethodNode method, InvokeDynamicInsnNode site) {
    method.instructions.clear();
    method.localVariables = null;
    RecordMethod out = new RecordMethod(host, method, site);
    switch (method.name) {
      case "hashCode" -> out.hash();
      case "equals" -> out.same();
      case "toString" -> out.text();
      default -> throw new IllegalArgumentException(host.name + "." + method.name);
    }
  }

  private void component(Handle c) {
    m.visitFieldInsn(Opcodes.GETFIELD, host.name, c.getName(), c.getDesc());
  }

  private void hash() {
    m.visitInsn(Opcodes.ICONST_0);
    for (Handle c : components) {
      Type t = Type.getType(c.getDesc());
      m.visitIntInsn(Opcodes.BIPUSH, 31);
      m.visitInsn(Opcodes.IMUL);
      m.visitVarInsn(Opcodes.ALOAD, 0);
      component(c);
      boolean plain = Conversion.plain(t);
      m.visitMethodInsn(
          Opcodes.INVOKESTATIC,
          plain ? Conversion.box(t) : OBJECTS,
          "hashCode",
          plain ? Type.getMethodDescriptor(Type.INT_TYPE, t) : "(Ljava/lang/Object;)I",
          false);
      m.visitInsn(Opcodes.IADD);
    }
    m.visitInsn(Opcodes.IRETURN);
  }

  private void same() {
    Label differ = new Label();
    m.visitVarInsn(Opcodes.ALOAD, 1);
    m.visitTypeInsn(Opcodes.INSTANCEOF, host.name);
    m.visitJumpInsn(Opcodes.IFEQ, differ);
    for (Handle c : components) {
      m.visitVarInsn(Opcodes.ALOAD, 0);
      component(c);
      m.visitVarInsn(Opcodes.ALOAD, 1);
      m.visitTypeInsn(Opcodes.CHECKCAST, host.name);
      component(c);
      Type t = Type.getType(c.getDesc());
      if (Conversion.plain(t)) {
        // As the boxed values compare: NaN is NaN, and 0 is not −0.
        String two = Type.getMethodDescriptor(Type.INT_TYPE, t, t);
        m.visitMethodInsn(Opcodes.INVOKESTATIC, Conversion.box(t), "compare", two, false);
        m.visitJumpInsn(Opcodes.IFNE, differ);
      } else {
        String two = "(Ljava/lang/Object;Ljava/lang/Object;)Z";
        m.visitMethodInsn(Opcodes.INVOKESTATIC, OBJECTS, "equals", two, false);
        m.visitJumpInsn(Opcodes.IFEQ, differ);
      }
    }
    m.visitInsn(Opcodes.ICONST_1);
    m.visitInsn(Opcodes.IRETURN);
    m.visitLabel(differ);
    m.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    m.visitInsn(Opcodes.ICONST_0);
    m.visitInsn(Opcodes.IRETURN);
  }

  private void text() {
    String name = host.name.substring(host.name.lastIndexOf('/') + 1);
    String before = name.substring(name.lastIndexOf('$') + 1) + "[";
    m.visitTypeInsn(Opcodes.NEW, BUILDER);
    m.visitInsn(Opcodes.DUP);
    m.visitMethodInsn(Opcodes.INVOKESPECIAL, BUILDER, "<init>", "()V", false);
    for (Handle c : components) {
      append(before + c.getName() + "=");
      m.visitVarInsn(Opcodes.ALOAD, 0);
      component(c);
      Type t = Type.getType(c.getDesc());
      boolean small = t == Type.BYTE_TYPE || t == Type.SHORT_TYPE;
      appended(small ? "I" : Conversion.plain(t) ? c.getDesc() : "Ljava/lang/Object;");
      before = ", ";
    }
    append(components.isEmpty() ? before + "]" : "]");
    m.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BUILDER, "toString", "()Ljava/lang/String;", false);
    m.visitInsn(Opcodes.ARETURN);
  }

  private void append(String constant) {
    m.visitLdcInsn(constant);
    appended("Ljava/lang/String;");
  }

  private void appended(String type) {
    String descriptor = "(" + type + ")L" + BUILDER + ";";
    m.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BUILDER, "append", descriptor, false);
  }
}

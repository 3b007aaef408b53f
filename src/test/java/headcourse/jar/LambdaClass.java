package headcourse.jar;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.FieldNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * The class of one lambda or method reference, as {@link java.lang.invoke.LambdaMetafactory} says
 * what it must be. What the lambda captures are its fields; one that captures nothing is made once.
 */
final class LambdaClass {
  private static final String OBJECT = "java/lang/Object";
  private static final String ONCE = "once";
  private static final String MAKE = "make";

  private final ClassNode node = new ClassNode();
  private final Type[] captured;
  private final Type self;

  /** Whether a site makes a plain lambda: not one to be serialized or with marker interfaces. */
  static boolean makes(InvokeDynamicInsnNode site) {
    return site.bsm.getOwner().equals("java/lang/invoke/LambdaMetafactory")
        && site.bsm.getName().equals("metafactory");
  }

  /**
   * Composes it.
   *
   * @param name internal name for the class
   * @param site where it is made
   */
  LambdaClass(String name, InvokeDynamicInsnNode site) {
    Type made = Type.getMethodType(site.desc);
    captured = made.getArgumentTypes();
    self = Type.getObjectType(name);
    node.version = Opcodes.V17;
    node.access = Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC | Opcodes.ACC_SUPER;
    node.name = name;
    node.superName = OBJECT;
    node.interfaces.add(made.getReturnType().getInternalName());
    constructor();
    body(site);
    if (captured.length == 0) {
      once();
    } else {
      make();
    }
  }

  ClassNode node() {
    return node;
  }

  /** What stands at the site instead: captured values are on the stack. */
  AbstractInsnNode call() {
    return captured.length == 0
        ? new FieldInsnNode(Opcodes.GETSTATIC, node.name, ONCE, self.getDescriptor())
        : new MethodInsnNode(Opcodes.INVOKESTATIC, node.name, MAKE, factory(), false);
  }

  private String factory() {
    return Type.getMethodDescriptor(self, captured);
  }

  private String initial() {
    return Type.getMethodDescriptor(Type.VOID_TYPE, captured);
  }

  private MethodNode method(int access, String name, String descriptor) {
    MethodNode m = new MethodNode(access, name, descriptor, null, null);
    node.methods.add(m);
    return m;
  }

  private static String field(int i) {
    return "c" + i;
  }

  private void constructor() {
    MethodNode m = method(Opcodes.ACC_PRIVATE, "<init>", initial());
    m.visitVarInsn(Opcodes.ALOAD, 0);
    m.visitMethodInsn(Opcodes.INVOKESPECIAL, OBJECT, "<init>", "()V", false);
    int slot = 1;
    for (int i = 0; i < captured.length; i++) {
      String type = captured[i].getDescriptor();
      node.fields.add(
          new FieldNode(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), type, null, null));
      m.visitVarInsn(Opcodes.ALOAD, 0);
      m.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), slot);
      m.visitFieldInsn(Opcodes.PUTFIELD, node.name, field(i), type);
      slot += captured[i].getSize();
    }
    m.visitInsn(Opcodes.RETURN);
  }

  private void create(MethodNode m) {
    m.visitTypeInsn(Opcodes.NEW, node.name);
    m.visitInsn(Opcodes.DUP);
    int slot = 0;
    for (Type t : captured) {
      m.visitVarInsn(t.getOpcode(Opcodes.ILOAD), slot);
      slot += t.getSize();
    }
    m.visitMethodInsn(Opcodes.INVOKESPECIAL, node.name, "<init>", initial(), false);
  }

  private void once() {
    int access = Opcodes.ACC_STATIC | Opcodes.ACC_FINAL;
    node.fields.add(new FieldNode(access, ONCE, self.getDescriptor(), null, null));
    MethodNode m = method(Opcodes.ACC_STATIC, "<clinit>", "()V");
    create(m);
    m.visitFieldInsn(Opcodes.PUTSTATIC, node.name, ONCE, self.getDescriptor());
    m.visitInsn(Opcodes.RETURN);
  }

  private void make() {
    MethodNode m = method(Opcodes.ACC_STATIC, MAKE, factory());
    create(m);
    m.visitInsn(Opcodes.ARETURN);
  }

  /** The interface's method: what is captured, then what is given, to the method meant. */
  private void body(InvokeDynamicInsnNode site) {
    Type declared = (Type) site.bsmArgs[0];
    Handle meant = (Handle) site.bsmArgs[1];
    Type bound = (Type) site.bsmArgs[2];
    MethodNode m = method(Opcodes.ACC_PUBLIC, site.name, declared.getDescriptor());
    Type owner = Type.getObjectType(meant.getOwner());
    boolean creates = meant.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    if (creates) {
      m.visitTypeInsn(Opcodes.NEW, meant.getOwner());
      m.visitInsn(Opcodes.DUP);
    }
    List<Type> wanted = new ArrayList<>();
    if (!creates && meant.getTag() != Opcodes.H_INVOKESTATIC) {
      wanted.add(owner);
    }
    wanted.addAll(List.of(Type.getArgumentTypes(meant.getDesc())));
    int n = 0;
    for (Type t : captured) {
      m.visitVarInsn(Opcodes.ALOAD, 0);
      m.visitFieldInsn(Opcodes.GETFIELD, node.name, field(n), t.getDescriptor());
      Conversion.write(m, t, t, wanted.get(n++));
    }
    Type[] given = declared.getArgumentTypes();
    int slot = 1;
    for (int i = 0; i < given.length; i++) {
      m.visitVarInsn(given[i].getOpcode(Opcodes.ILOAD), slot);
      slot += given[i].getSize();
      Conversion.write(m, given[i], bound.getArgumentTypes()[i], wanted.get(n++));
    }
    m.visitMethodInsn(
        call(meant), meant.getOwner(), meant.getName(), meant.getDesc(), meant.isInterface());
    Type result = creates ? owner : Type.getReturnType(meant.getDesc());
    Conversion.writeReturn(m, result, bound.getReturnType(), declared.getReturnType());
  }

  private static int call(Handle meant) {
    return switch (meant.getTag()) {
      case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
      case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
      // A private method of the nest is called like any other.
      default -> meant.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
    };
  }
}

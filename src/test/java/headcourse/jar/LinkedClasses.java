package headcourse.jar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * The classes of a jar with their lambdas made into classes of their own, and the methods of their
 * records written out. Sites of other kinds stay as they are.
 */
final class LinkedClasses {
  private final Map<String, ClassNode> all = new TreeMap<>();
  private final Map<String, ClassNode> made = new TreeMap<>();
  private final Set<String> changed = new LinkedHashSet<>();

  private LinkedClasses(Map<String, byte[]> entries) {
    entries.forEach(
        (name, bytes) -> {
          if (name.endsWith(".class") && !name.endsWith("-info.class")) {
            ClassNode node = new ClassNode();
            new ClassReader(bytes).accept(node, 0);
            all.put(node.name, node);
          }
        });
  }

  /**
   * Rewrites.
   *
   * @param entries contents of a jar by name
   * @return the same with the classes changed, those made at the end
   */
  static Map<String, byte[]> of(Map<String, byte[]> entries) {
    LinkedClasses classes = new LinkedClasses(entries);
    classes.all.values().forEach(classes::link);
    Map<String, byte[]> out = new LinkedHashMap<>(entries);
    for (String name : classes.changed) {
      out.put(name + ".class", bytes(classes.all.get(name)));
    }
    classes.made.forEach((name, node) -> out.put(name + ".class", bytes(node)));
    return out;
  }

  private static byte[] bytes(ClassNode node) {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    node.accept(writer);
    return writer.toByteArray();
  }

  private void link(ClassNode host) {
    int lambdas = 0;
    for (MethodNode method : host.methods) {
      for (AbstractInsnNode i : method.instructions.toArray()) {
        if (!(i instanceof InvokeDynamicInsnNode site)) {
          continue;
        }
        if (LambdaClass.makes(site)) {
          LambdaClass lambda = new LambdaClass(host.name + "$$" + lambdas++, site);
          method.instructions.set(site, lambda.call());
          adopt(host, lambda.node());
        } else if (RecordMethod.makes(site)) {
          RecordMethod.write(host, method, site);
          changed.add(host.name);
        }
      }
    }
  }

  /** Lambdas call private methods of their host, so they belong to its nest. */
  private void adopt(ClassNode host, ClassNode lambda) {
    ClassNode nest = host.nestHostClass == null ? host : all.get(host.nestHostClass);
    List<String> members = nest.nestMembers == null ? new ArrayList<>() : nest.nestMembers;
    members.add(lambda.name);
    nest.nestMembers = members;
    lambda.nestHostClass = nest.name;
    // Classes know nests from this version on.
    nest.version = Math.max(nest.version & 0xffff, Opcodes.V11);
    host.version = Math.max(host.version & 0xffff, Opcodes.V11);
    made.put(lambda.name, lambda);
    changed.add(host.name);
    changed.add(nest.name);
  }
}

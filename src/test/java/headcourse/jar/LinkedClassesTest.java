package headcourse.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** What is made at build time does as what the virtual machine of this JDK makes at run time. */
class LinkedClassesTest {
  /** Loads the classes given, and those alone, by itself. */
  private static final class Loader extends ClassLoader {
    private final Map<String, byte[]> entries;

    Loader(Map<String, byte[]> entries) {
      super(LinkedClassesTest.class.getClassLoader());
      this.entries = entries;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      byte[] bytes = entries.get(name.replace('.', '/') + ".class");
      Class<?> loaded = findLoadedClass(name);
      if (bytes == null || loaded != null) {
        return loaded != null ? loaded : super.loadClass(name, resolve);
      }
      return defineClass(name, bytes, 0, bytes.length);
    }
  }

  private static Map<String, byte[]> samples() throws IOException {
    Map<String, byte[]> out = new LinkedHashMap<>();
    for (String inner : List.of("", "$Inner", "$Named", "$Everything", "$Nothing", "$Private")) {
      String name = "headcourse/jar/Samples" + inner + ".class";
      try (InputStream in = LinkedClassesTest.class.getClassLoader().getResourceAsStream(name)) {
        out.put(name, in.readAllBytes());
      }
    }
    return out;
  }

  @SuppressWarnings("unchecked")
  private static List<String> results(ClassLoader loader) throws Exception {
    Class<?> samples = loader.loadClass("headcourse.jar.Samples");
    assertEquals(loader, samples.getClassLoader());
    return ((Callable<List<String>>) samples.getDeclaredConstructor().newInstance()).call();
  }

  @Test
  void linkedClassesDoTheSame() throws Exception {
    List<String> plain = results(new Loader(samples()));
    assertTrue(plain.size() > 40);
    assertEquals(plain, results(new Loader(LinkedClasses.of(samples()))));
  }

  @Test
  void onlyWhatCantBeMadePlainIsLeft() throws Exception {
    int left = 0;
    for (byte[] bytes : LinkedClasses.of(samples()).values()) {
      ClassNode node = new ClassNode();
      new ClassReader(bytes).accept(node, 0);
      for (MethodNode m : node.methods) {
        for (AbstractInsnNode i : m.instructions) {
          left += i instanceof InvokeDynamicInsnNode ? 1 : 0;
        }
      }
    }
    // The one lambda that can be serialized: where it is made, and where it is read back.
    assertEquals(2, left);
  }

  @Test
  void jarKeepsItsEntriesAndIsNotCompressed(@TempDir Path folder) throws IOException {
    Path jar = folder.resolve("some.jar");
    Map<String, byte[]> entries = new LinkedHashMap<>();
    entries.put("META-INF/MANIFEST.MF", "Manifest-Version: 1.0\n".getBytes("UTF-8"));
    entries.put("b/words.txt", "x".repeat(5000).getBytes("UTF-8"));
    entries.put("a/none.txt", new byte[0]);
    StoredJar.write(jar, entries);
    byte[] first = Files.readAllBytes(jar);
    Map<String, byte[]> back = StoredJar.read(jar);
    assertEquals(List.copyOf(entries.keySet()), List.copyOf(back.keySet()));
    entries.forEach((name, bytes) -> assertEquals(bytes.length, back.get(name).length));
    assertTrue(first.length > 5000);
    StoredJar.write(jar, back);
    assertEquals(-1, java.util.Arrays.mismatch(first, Files.readAllBytes(jar)));
    assertFalse(Files.exists(folder.resolve("some.jar.part")));
  }
}

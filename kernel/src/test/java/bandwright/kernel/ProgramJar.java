// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import bandwright.kernel.app.Main;

/** The program as one jar, made of what the tests run with: the real one is packaged only after them. */
public final class ProgramJar {
    private static final Pattern FOR_TESTS = Pattern.compile(
            "test-classes|surefire|spark|scala|hadoop|junit|assertj|archunit|opentest4j|apiguardian|byte-buddy|slf4j");

    private ProgramJar() {}

    static Path write(Path file) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Main.class.getName());
        manifest.getMainAttributes().put(Attributes.Name.MULTI_RELEASE, "true");
        Set<String> names = new HashSet<>(Set.of("META-INF/MANIFEST.MF", "module-info.class"));
        try (OutputStream stream = Files.newOutputStream(file);
                JarOutputStream jar = new JarOutputStream(stream, manifest)) {
            for (String element : Pattern.compile(File.pathSeparator, Pattern.LITERAL)
                    .splitAsStream(classPath())
                    .toList()) {
                if (FOR_TESTS.matcher(element).find()) {
                    continue;
                }
                if (Files.isDirectory(Path.of(element))) {
                    addFolder(jar, Path.of(element), names);
                } else {
                    addJar(jar, element, names);
                }
            }
        }
        return file;
    }

    public static String classPath() {
        // Surefire keeps the real one there when it starts from a jar that only names it.
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    private static void addFolder(JarOutputStream jar, Path folder, Set<String> names) throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(folder)) {
            files = walk.filter(Files::isRegularFile).sorted().toList();
        }
        for (Path file : files) {
            add(
                    jar,
                    folder.relativize(file).toString().replace(File.separatorChar, '/'),
                    Files.readAllBytes(file),
                    names);
        }
    }

    private static void addJar(JarOutputStream jar, String element, Set<String> names) throws IOException {
        try (JarFile from = new JarFile(element)) {
            for (JarEntry entry : from.stream().toList()) {
                if (!entry.isDirectory()) {
                    add(jar, entry.getName(), from.getInputStream(entry).readAllBytes(), names);
                }
            }
        }
    }

    private static void add(JarOutputStream jar, String name, byte[] bytes, Set<String> names) throws IOException {
        if (names.add(name)) {
            jar.putNextEntry(new JarEntry(name));
            jar.write(bytes);
            jar.closeEntry();
        }
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.operation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * Two bodies and the volume they share, read from a file of {@code dsl/src/test/cases/solid}. Lines: {@code #} why it is
 * nasty; {@code a} and {@code b} a body each; {@code common} the volume in mm³; {@code within} how far it may be off.
 *
 * <p>Bodies: {@code box x y z x y z}; {@code cylinder x y z} (middle of the first end) {@code x y z} (axis) radius length
 * facets; {@code cone} the same with two radii; {@code ball x y z} radius facets.
 */
record SolidCase(String name, Mesh a, Mesh b, double common, double within) {
    static final Path FOLDER = Path.of(System.getProperty("repository", ".."), "dsl/src/test/cases/solid");

    static List<SolidCase> in(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".txt"))
                    .sorted()
                    .map(SolidCase::read)
                    .toList();
        } catch (IOException exception) {
            throw new UncheckedIOException(exception);
        }
    }

    private static SolidCase read(Path file) {
        Map<String, String> lines = new HashMap<>();
        try {
            for (String line : Files.readAllLines(file)) {
                String[] words = line.strip().split(" ", 2);
                lines.put(words[0], words.length > 1 ? words[1] : "");
            }
        } catch (IOException exception) {
            throw new UncheckedIOException(exception);
        }
        return new SolidCase(
                file.getFileName().toString(),
                body(need(lines, "a")),
                body(need(lines, "b")),
                Double.parseDouble(need(lines, "common")),
                Double.parseDouble(need(lines, "within")));
    }

    private static String need(Map<String, String> lines, String key) {
        String line = lines.get(key);
        if (line == null) {
            throw new IllegalArgumentException("A case needs a line " + key);
        }
        return line;
    }

    private static Mesh body(String line) {
        String[] words = line.split(" ", -1);
        double[] n = Stream.of(words).skip(1).mapToDouble(Double::parseDouble).toArray();
        return switch (words[0]) {
            case "box" -> Primitives.box(n[0], n[1], n[2], n[3], n[4], n[5]);
            case "cylinder" -> Primitives.cylinder(point(n, 0), point(n, 3), n[6], n[7], (int) n[8]);
            case "cone" -> Primitives.cone(point(n, 0), point(n, 3), n[6], n[7], n[8], (int) n[9]);
            case "ball" -> Primitives.ball(point(n, 0), n[3], (int) n[4]);
            default -> throw new IllegalArgumentException("No body is called " + words[0]);
        };
    }

    private static double[] point(double[] numbers, int from) {
        return new double[] {numbers[from], numbers[from + 1], numbers[from + 2]};
    }

    @Override
    public String toString() {
        return name;
    }
}

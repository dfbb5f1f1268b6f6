// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.golden;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;

import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

/**
 * Inputs and what is expected of them, as files: {@code src/test/golden/<area>/<case>.ring} and beside it the expected
 * text. A missing expected file is written and the test fails; {@code -Dgolden=update} rewrites all.
 */
public final class GoldenFiles {
    private static final Path ROOT = Path.of("src", "test", "golden");

    private GoldenFiles() {}

    /** An input: its name without folder and ending, its file, its text. */
    public record Case(String name, Path file, String text) {
        /** The text as people would call it: by its file name. */
        public SourceText source() {
            return new SourceText(file.getFileName().toString(), text);
        }

        /** The file beside the input with another ending. */
        public Path beside(String ending) {
            return file.resolveSibling(name + "." + ending);
        }
    }

    /** All inputs of an area, in alphabetical order. */
    public static List<Case> cases(String area) {
        try (Stream<Path> files = Files.list(ROOT.resolve(area))) {
            return files.filter(file -> file.toString().endsWith(".ring"))
                    .sorted()
                    .map(GoldenFiles::read)
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** A test for each input of an area, which compares the answer with the file of that ending. */
    public static Stream<DynamicTest> tests(String area, String ending, Function<Case, String> answer) {
        return cases(area).stream()
                .map(input -> DynamicTest.dynamicTest(
                        area + "/" + input.name(), () -> check(input.beside(ending), answer.apply(input))));
    }

    /** Compares with an expected file, or writes it. */
    public static void check(Path expected, String actual) {
        try {
            boolean missing = !Files.exists(expected);
            if (missing || "update".equals(System.getProperty("golden"))) {
                Files.writeString(expected, actual, StandardCharsets.UTF_8);
            }
            if (missing) {
                fail("%s was missing and has been written; look at it and run again", expected);
            }
            assertThat(actual).isEqualTo(Files.readString(expected, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** The codes of the messages in one section of the texts, such as {@code parse}. */
    public static Set<String> codes(String section) {
        try {
            Path texts = Path.of("src/main/resources/bandwright/dsl/diagnostic/messages.properties");
            String all = Files.readString(texts, StandardCharsets.UTF_8);
            String own = all.split("# --- " + section + ":", 2)[1].split("\n# --- ", 2)[0];
            return own.lines()
                    .filter(line -> line.matches("[a-z][a-z-]* = .*"))
                    .map(line -> line.substring(0, line.indexOf(' ')))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Case read(Path file) {
        try {
            String name = file.getFileName().toString().replaceFirst("\\.ring$", "");
            return new Case(name, file, Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import bandwright.dsl.construct.TextRing;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.edit.WordHelp;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.measure.RingMeasurer;
import bandwright.dsl.parse.Expected;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.expression.Functions;
import bandwright.dsl.resolve.profile.Form;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.SectionDrawing;
import bandwright.dsl.view.drawing.SvgWriter;
import bandwright.dsl.view.ring.RingSection;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The reference page: written by hand where it explains ({@code template.md}), by the program where it lists. Its examples are run
 * as the cells of one notebook; the page and its drawings are compared with {@code docs}.
 */
class ReferenceTest {
    private static final Path TEMPLATE = Path.of("src/test/resources/bandwright/dsl/reference/template.md");
    private static final Path MESSAGES = Path.of("src/main/resources/bandwright/dsl/diagnostic/messages.properties");
    private static final Pattern EXAMPLE = Pattern.compile("```ring\n(.*?)```", Pattern.DOTALL);
    private static final Pattern LIST = Pattern.compile("\\{\\{([a-z]+)}}");

    @Test
    void every_example_runs_and_answers() throws IOException {
        Workbench workbench = Workbench.empty();
        Matcher example = EXAMPLE.matcher(Files.readString(TEMPLATE));
        int number = 0;
        while (example.find()) {
            number++;
            Outcome outcome = workbench.run("cell-" + number, new SourceText("example " + number, example.group(1)));
            assertThat(outcome.diagnostics().stream()
                            .filter(told -> !told.code().equals("redefined"))
                            .map(Diagnostic::message))
                    .as(example.group(1))
                    .isEmpty();
            workbench = outcome.workbench();
        }
        assertThat(number).isGreaterThan(15);
    }

    @Test
    void the_page_says_what_the_program_knows() throws IOException {
        String page = LIST.matcher(Files.readString(TEMPLATE))
                .replaceAll(list -> Matcher.quoteReplacement(list(list.group(1))));
        GoldenFiles.check(Path.of("docs/reference.md"), page);
    }

    @Test
    void every_form_is_drawn() {
        for (Form form : Form.values()) {
            String text = "profile p = " + form.word() + "(width: 4 mm, height: 1.8 mm)\n"
                    + "band b { finger ISO 54  profile p  metal silver-925 }";
            // Without what checks say: a form as such is not too thin.
            Drawing drawing = SectionDrawing.of(RingSection.of(TextRing.of(text), Set.of("b"), 0), 10);
            GoldenFiles.check(Path.of("docs/forms", form.word() + ".svg"), SvgWriter.write(drawing));
        }
    }

    private static String list(String name) {
        return switch (name) {
            case "functions" -> table("function", Functions.WORDS.stream(), ReferenceTest::help);
            case "measures" -> table("measure", new RingMeasurer(new Workshop()).words().stream(), ReferenceTest::help);
            case "units" ->
                table(
                        "unit",
                        Unit.symbols().stream().filter(unit -> WordHelp.of(unit).isPresent()),
                        ReferenceTest::help);
            case "words" -> table("word", Expected.allWords().stream(), ReferenceTest::help);
            case "sizes" -> sizes();
            case "forms" -> forms();
            case "errors" -> errors();
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static String help(String word) {
        return WordHelp.of(word).orElseThrow();
    }

    private static String table(String head, Stream<String> words, Function<String, String> meaning) {
        return words.sorted()
                .map(word -> "| `" + word + "` | " + meaning.apply(word) + " |")
                .collect(Collectors.joining("\n", "| " + head + " | meaning |\n| --- | --- |\n", ""));
    }

    private static String sizes() {
        List<String> rows = new ArrayList<>(List.of(
                "| system | where | formula | source | ISO 54 is | to know |",
                "| --- | --- | --- | --- | --- | --- |"));
        for (SizeSystem system : SizeSystem.values()) {
            FingerSize same = new FingerSize(SizeSystem.ISO, 54).in(system);
            rows.add("| `" + system.word() + "` | " + system.fullName() + " | " + system.formula() + " | "
                    + system.standard() + " | " + same.text() + " | "
                    + system.caution().orElse("") + " |");
        }
        return String.join("\n", rows);
    }

    private static String forms() {
        List<String> parts = new ArrayList<>();
        for (Form form : Form.values()) {
            parts.add("### " + form.word() + "\n\n" + help(form.word()) + " Sizes: `"
                    + String.join("`, `", form.sizes()) + "`.\n\n![Section of a band, " + form.word()
                    + ", 4 mm wide and 1.8 mm high](forms/" + form.word() + ".svg)");
        }
        return String.join("\n\n", parts);
    }

    private static String errors() {
        Properties messages = new Properties();
        try (var file = Files.newBufferedReader(MESSAGES, StandardCharsets.UTF_8)) {
            messages.load(file);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
        List<String> rows = new ArrayList<>(List.of("| code | says | advice |", "| --- | --- | --- |"));
        for (String code : new TreeSet<>(messages.stringPropertyNames())) {
            if (!code.contains(".")) {
                rows.add("| `" + code + "` | " + cell(messages.getProperty(code)) + " | "
                        + cell(messages.getProperty(code + ".advice", "")) + " |");
            }
        }
        return String.format(Locale.ROOT, "%d codes; `{0}` stands for what is filled in.%n%n", rows.size() - 2)
                        .replace("\r\n", "\n")
                + String.join("\n", rows);
    }

    private static String cell(String text) {
        return text.replace("''", "'").replace("|", "\\|");
    }
}

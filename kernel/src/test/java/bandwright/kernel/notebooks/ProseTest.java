// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.notebooks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.kernel.notebook.CellKind;
import bandwright.kernel.notebook.Notebook;
import bandwright.kernel.notebook.NotebookCell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

/** The words of the notebooks: what a chapter holds, numbers that are asked for and not typed, the glossary, spelling. */
class ProseTest {
    private static final Pattern CODE = Pattern.compile("`[^`]*`|\\]\\([^)]*\\)");
    private static final Pattern FIGURE =
            Pattern.compile("\\d[\\d.,/]*\\s?(mm|cm|inch|g|dwt|ct|deg|EUR|€|%|ug)(?![\\p{L}])");
    private static final Pattern LINK_TARGET = Pattern.compile("\\]\\([^)]*\\)");
    /** A source, with the sentence it stands in and the one before: it says where their figures are from, and no others'. */
    private static final Pattern SOURCED = Pattern.compile(
            "(?:[^.;:!?]|[.;:!?](?!\\s))*(?:[.;:!?]\\s(?:[^.;:!?]|[.;:!?](?!\\s))*)?(?:\\(Source: [^)]*\\)|common practice, no source)");

    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final String HUNSPELL = "/usr/bin/hunspell";
    private static final Path OWN_WORDS = Path.of("src/test/resources/bandwright/kernel/notebooks/words.txt");

    @TempDir
    private Path folder;

    @Test
    void a_chapter_has_goals_a_time_exercises_with_hints_solutions_and_cautions() {
        List<Path> chapters = Folder.files("course", ".ipynb");

        assertThat(chapters).hasSize(12);
        for (Path chapter : chapters) {
            Notebook notebook = Folder.notebook(chapter);
            String words = prose(chapter);

            assertThat(words)
                    .as(Folder.name(chapter))
                    .contains("**You will be able to**", "**Time:**", "**You need:**", "## Exercises", "> **Hint:**")
                    .containsPattern("(?i)caution|at the bench|before it leaves the house|what checks do not know");
            assertThat(notebook.cells())
                    .as(Folder.name(chapter))
                    .anyMatch(cell -> cell.tags().contains("solution"));
            assertThat(notebook.cells())
                    .as(Folder.name(chapter))
                    .anyMatch(cell ->
                            cell.id().startsWith("check-") && cell.source().contains("require "));
        }
    }

    @Test
    void a_figure_with_a_unit_is_asked_for_unless_its_source_stands_beside_it() {
        List<String> typed = new ArrayList<>();
        for (Path file : Folder.files("", ".ipynb")) {
            for (NotebookCell cell : Folder.markdown(file)) {
                for (String paragraph : cell.source().split("\\n\\s*\\n", -1)) {
                    String text = LINK_TARGET.matcher(paragraph).replaceAll("]");
                    for (String unsourced : SOURCED.split(text, -1)) {
                        if (FIGURE.matcher(bare(unsourced)).find()) {
                            typed.add(Folder.name(file) + ", " + cell.id() + ": " + unsourced);
                        }
                    }
                }
            }
        }

        assertThat(typed).isEmpty();
    }

    @Test
    void the_glossary_is_in_order_and_its_rival_words_stand_nowhere_else() {
        List<String[]> rows = Folder.text(Folder.ROOT.resolve("glossary.md"))
                .lines()
                .filter(line -> line.startsWith("| "))
                .skip(2)
                .map(line -> line.split(" *\\| *", -1))
                .toList();
        List<String> words =
                rows.stream().map(row -> row[1].toLowerCase(Locale.ROOT)).toList();
        String course = Folder.files("course", ".ipynb").stream()
                .map(file -> Folder.notebook(file).cells().stream()
                        .filter(cell -> cell.kind() == CellKind.MARKDOWN)
                        .map(NotebookCell::source)
                        .collect(Collectors.joining("\n")))
                .collect(Collectors.joining("\n"))
                .toLowerCase(Locale.ROOT);

        assertThat(words).hasSizeGreaterThan(40).isSorted().doesNotHaveDuplicates();
        assertThat(words)
                .allSatisfy(word ->
                        assertThat(course).containsPattern("(?<![\\p{L}-])" + word + "(?:s|es|d|ed)?(?![\\p{L}-])"));
        String told = bare(course).replaceAll("\\(source: [^)]*\\)", "");
        List<String> rivals = rows.stream()
                .flatMap(row -> Stream.of(row[2].split(", ", -1)))
                .filter(rival -> !rival.equals("–"))
                .toList();
        assertThat(rivals)
                .contains("prong", "claw", "bead", "grain", "comfort fit", "gypsy")
                .doesNotHaveDuplicates();
        assertThat(rivals).allSatisfy(rival -> assertThat(told).doesNotContainPattern("\\b" + rival + "s?\\b"));
    }

    @Test
    void links_between_the_notebooks_lead_somewhere() {
        Pattern link = Pattern.compile("\\]\\(([^):]+)\\)");
        List<Path> files = Stream.concat(Folder.files("", ".md").stream(), Folder.files("", ".ipynb").stream())
                .toList();

        for (Path file : files) {
            assertThat(link.matcher(prose(file)).results().map(found -> found.group(1)))
                    .as(file.toString())
                    .allSatisfy(target -> assertThat(file.resolveSibling(target.replaceFirst("#.*", "")))
                            .exists());
        }
    }

    @Test
    void every_word_is_spelt_as_in_britain() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of(HUNSPELL)), "there is no hunspell");
        Path text = folder.resolve("words.txt");
        Files.writeString(text, written());
        ProcessBuilder speller = new ProcessBuilder(
                HUNSPELL,
                "-d",
                "en_GB",
                "-i",
                "UTF-8",
                "-p",
                OWN_WORDS.toAbsolutePath().toString(),
                "-l",
                text.toString());
        Process process = speller.redirectErrorStream(true).start();
        String misspelt = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        assumeTrue(!misspelt.contains("Can't open"), "hunspell has no British dictionary");

        assertThat(misspelt.lines().distinct().sorted()).isEmpty();
    }

    /** All that people read in the folder: Markdown without code, and in ring texts comments, titles and reasons. */
    private static String written() {
        Stream<String> documents = Stream.concat(Folder.files("", ".md").stream(), Folder.files("", ".ipynb").stream())
                .map(file -> bare(prose(file)));
        Stream<String> codes = Folder.files("", ".ipynb").stream()
                .flatMap(file -> Folder.notebook(file).cells().stream())
                .filter(cell -> cell.kind() == CellKind.CODE && !cell.source().startsWith("java"))
                .map(NotebookCell::source);
        Stream<String> texts = Folder.files("designs", ".ring").stream().map(Folder::text);
        return Stream.concat(documents, Stream.concat(codes, texts).map(ProseTest::quotedAndCommented))
                .collect(Collectors.joining("\n"))
                .replaceAll("['’]s\\b", "");
    }

    private static String quotedAndCommented(String code) {
        return code.lines()
                .map(line -> line.startsWith("#")
                        ? line.substring(1)
                        : QUOTED.matcher(line)
                                .results()
                                .map((MatchResult found) -> found.group(1))
                                .filter(quoted -> !quoted.matches("[\\w-]+\\.[a-z0-9]+"))
                                .collect(Collectors.joining(" ")))
                .collect(Collectors.joining("\n"));
    }

    /** A document's Markdown. */
    private static String prose(Path file) {
        return file.toString().endsWith(".md")
                ? Folder.text(file).replaceAll("(?s)```.*?```", "")
                : Folder.markdown(file).stream().map(NotebookCell::source).collect(Collectors.joining("\n\n"));
    }

    /** Without code and without the targets of links. */
    private static String bare(String markdown) {
        return CODE.matcher(markdown).replaceAll(" ");
    }
}

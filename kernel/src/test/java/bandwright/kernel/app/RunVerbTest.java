// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

class RunVerbTest {
    private static final String GOOD = Samples.notebook(5, "{}", Samples.code("a", Samples.RING.strip()));
    private static final String BAD = Samples.notebook(5, "{}", Samples.code("a", "a = 1 mm +"));

    @TempDir
    Path folder;

    @Test
    void without_options_files_lie_beside_the_input() {
        Path input = Samples.file(folder, "ring.ipynb", GOOD);

        Ran ran = Ran.command("run", input);

        assertThat(ran.exitCode()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("cell 1 of 1: done\n").contains("wrote  " + folder.resolve("ring.html"));
        assertThat(files()).containsExactly("ring.executed.ipynb", "ring.html", "ring.ipynb");
        assertThat(input).hasContent(GOOD);
    }

    @Test
    void with_out_files_lie_in_the_folder() {
        Path input = Samples.file(folder, "ring.ipynb", GOOD);

        Ran ran = Ran.command("run", input, "--out", folder.resolve("made").resolve("here"), "--quiet");

        assertThat(ran).isEqualTo(new Ran(0, "", ""));
        assertThat(files()).containsExactly("made/here/ring.html", "made/here/ring.ipynb", "ring.ipynb");
    }

    @Test
    void in_place_the_input_is_replaced_and_keeps_its_rights() throws IOException {
        Path input = Samples.file(folder, "ring.ipynb", GOOD);
        var rights = Files.getPosixFilePermissions(input);

        Ran ran = Ran.command("run", input, "--in-place");

        assertThat(ran.exitCode()).isZero();
        assertThat(files()).containsExactly("ring.html", "ring.ipynb");
        assertThat(Files.readString(input)).contains("\"execution_count\": 1");
        assertThat(Files.getPosixFilePermissions(input)).isEqualTo(rights);
    }

    @Test
    void an_out_that_is_the_input_needs_in_place() {
        Path input = Samples.file(folder, "ring.ipynb", GOOD);

        Ran refused = Ran.command("run", input, "--out", folder);

        assertThat(refused.exitCode()).isEqualTo(2);
        assertThat(refused.err()).contains("this would overwrite", "--in-place");
        assertThat(files()).containsExactly("ring.ipynb");
        assertThat(input).hasContent(GOOD);
        assertThat(Ran.command("run", input, "--out", folder, "--in-place").exitCode())
                .isZero();
    }

    @Test
    void a_link_to_the_input_is_the_input() throws IOException {
        Path input = Samples.file(folder, "ring.ipynb", GOOD);
        Files.createSymbolicLink(folder.resolve("ring.executed.ipynb"), input);

        assertThat(Ran.command("run", input).exitCode()).isEqualTo(2);
        assertThat(input).hasContent(GOOD);
    }

    @Test
    void a_ring_text_cannot_be_replaced_by_a_notebook() {
        Path input = Samples.file(folder, "ring.ring", Samples.RING);

        assertThat(Ran.command("run", input, "--in-place").exitCode()).isEqualTo(2);
        assertThat(Ran.command("run", input).exitCode()).isZero();
        assertThat(files()).containsExactly("ring.executed.ipynb", "ring.html", "ring.ring");
    }

    @Test
    void a_cell_with_an_error_gives_one_and_still_writes() {
        Ran ran = Ran.command("run", Samples.file(folder, "ring.ipynb", BAD));

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.out()).startsWith("cell 1 of 1: error\n");
        assertThat(ran.err()).startsWith("error ");
        assertThat(files()).containsExactly("ring.executed.ipynb", "ring.html", "ring.ipynb");
    }

    @Test
    void a_failed_requirement_gives_three() {
        Path input = Samples.file(folder, "ring.ring", Samples.RING + "require 1 mm >= 2 mm\n");

        Ran ran = Ran.command("run", input);

        assertThat(ran.exitCode()).isEqualTo(3);
        assertThat(ran.out()).startsWith("cell 1 of 1: require failed\n").contains("0 passed, 1 failed");
    }

    @Test
    void a_question_without_an_answer_gives_one_and_is_told_once() {
        Path input = Samples.file(folder, "ring.ring", Samples.RING + "show weight(nobody)\n");

        Ran ran = Ran.command("run", input);

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.out()).startsWith("cell 1 of 1: waiting\n");
        assertThat(ran.err()).containsOnlyOnce("nothing defines nobody");
    }

    @Test
    void files_wait_with_a_statement_of_their_cell() throws IOException {
        Path input = Samples.file(folder, "ring.ring", Samples.RING + "export \"shank.stl\"\nshow weight(nobody)\n");

        Ran ran = Ran.command("run", input);

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.err()).contains("shank.stl is not written");
        assertThat(files()).doesNotContain("shank.stl");
    }

    @Test
    void where_one_name_is_misspelt_it_is_named_and_there_is_no_fingerprint() {
        Path input = Samples.file(folder, "ring.ring", Samples.RING.replace("width: a", "width: b"));

        Ran ran = Ran.command("run", input);

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.out()).doesNotContain("fingerprint");
        assertThat(ran.err())
                .contains("there is no ring to measure yet: it waits for b, in ring.ring, line 2")
                .doesNotContain("a ring is a band");
    }

    @Test
    void no_ring_and_nothing_to_run_give_one() {
        Ran none = Ran.command("run", Samples.file(folder, "none.ring", "title \"Nothing yet\"\n"), "--quiet");
        Ran empty = Ran.command("run", Samples.file(folder, "empty.ring", ""), "--quiet");

        assertThat(none.exitCode()).isEqualTo(1);
        assertThat(none.err()).startsWith("bandwright: there is no ring to measure");
        assertThat(empty).isEqualTo(new Ran(1, "", "bandwright: there is nothing to run\n"));
    }

    @Test
    void unreadable_input_gives_two_and_writes_nothing() throws IOException {
        Path binary = Files.write(folder.resolve("binary.ipynb"), new byte[] {0, 1, 2});
        Path invalid = Samples.file(folder, "invalid.ipynb", "{");
        Path other =
                Samples.file(folder, "other.ipynb", Samples.notebook(5, "{\"kernelspec\": {\"name\": \"python3\"}}"));
        List<String> before = files();

        for (Path input : List.of(folder.resolve("gone.ipynb"), folder, binary, invalid, other)) {
            Ran ran = Ran.command("run", input);
            assertThat(ran.exitCode()).as(input.toString()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err())
                    .startsWith("bandwright: ")
                    .doesNotContain("Exception")
                    .hasLineCount(1);
        }
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void a_place_that_cannot_be_written_gives_two() throws IOException {
        Path input = Samples.file(folder, "ring.ipynb", GOOD);
        Path file = Samples.file(folder, "file", "");
        Files.createDirectory(folder.resolve("ring.html"));

        assertThat(Ran.command("run", input, "--out", file).err()).contains("is a file, not a folder");
        assertThat(Ran.command("run", input, "--out", file.resolve("below")).exitCode())
                .isEqualTo(2);
        assertThat(Ran.command("run", input).err()).contains("ring.html is a folder");
        assertThat(files()).containsExactly("file", "ring.ipynb");
    }

    @Test
    void an_error_takes_the_whole_text_and_the_end_says_so() {
        String text = Samples.RING + "x = 5 mm + 2 g\n";
        Ran one = Ran.command("run", Samples.file(folder, "one.ring", text));
        Ran two = Ran.command(
                "run", Samples.file(folder, "two.ring", text + "limit casting-wall 1 mm\nz = = 2\ny = )\n"));
        Ran measured = Ran.command("measure", Samples.file(folder, "three.ring", Samples.RING + "x = 5 mm + 2 g\n"));

        assertThat(one.exitCode()).isEqualTo(1);
        assertThat(one.out()).contains("The ring was not made, because of the error in one.ring, line 4.");
        assertThat(one.err()).endsWith("bandwright: the ring was not made, because of the error in one.ring, line 4\n");
        assertThat(two.out()).contains("The ring was not made, because of 2 errors, the first in two.ring, line 6.");
        assertThat(measured.err()).contains("the ring was not made, because of the error in three.ring, line 4");
    }

    @Test
    void a_slip_in_a_question_leaves_the_ring_and_the_other_questions() {
        String text = Samples.RING + "show casting { shrinkage 1.5 mm }\nshow weights\n";
        Ran ran = Ran.command("run", Samples.file(folder, "one.ring", text));

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.out())
                .contains("Weights of the finished parts", "metal   5.245 g")
                .doesNotContain("was not made");
        assertThat(ran.out() + ran.err()).contains("a share, such as 1.6 %, is wanted here, not a length");
    }

    @Test
    void what_waits_in_the_end_is_said_last() {
        String text = Samples.RING
                + "stone-row lights on shank { stone round diamond 1.5 mm  around half  spacing 0.2 mm  sink 0.1 mm }\n";
        Ran ran = Ran.command("run", Samples.file(folder, "half.ring", text));

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.err().strip())
                .contains("around 180 deg")
                .endsWith("bandwright: a part of the ring is not made: it waits for half, in half.ring, line "
                        + text.lines().count());
    }

    @Test
    void of_a_text_the_answers_are_printed_and_of_a_notebook_it_is_said_where_they_are() {
        String asked = Samples.RING + "show checks\nbreadth = 3 mm\nbreadth * 2\nshow weights in all metals\n"
                + "vary breadth from 2 mm to 4 mm step 0.01 mm { breadth * 2 }\n";
        Ran text = Ran.command("run", Samples.file(folder, "ring.ring", asked));
        Ran notebook = Ran.command(
                "run",
                Samples.file(folder, "asked.ipynb", Samples.notebook(5, "{}", Samples.code("a", asked.strip()))));
        Ran quiet = Ran.command("run", folder.resolve("ring.ring"), "--quiet");
        Ran silent = Ran.command("run", Samples.file(folder, "silent.ring", Samples.RING));

        assertThat(text.out())
                .startsWith("cell 1 of 1: done\n\n")
                .contains("thinnest wall as cast", "breadth * 2 = 6 mm", " more lines in the page\n")
                .as("the table of all metals is whole")
                .contains("tantalum", "Each line is a ring of that metal alone")
                .endsWith(
                        "All tables and pictures are in these files: the page opens in any browser, the notebook in Jupyter.\n");
        assertThat(notebook.out())
                .doesNotContain("thinnest wall as cast")
                .contains("All tables and pictures are in these files");
        assertThat(quiet.out()).isEmpty();
        assertThat(silent.out()).doesNotContain("All tables and pictures");
    }

    @Test
    void the_ring_of_the_readme_runs_and_no_check_fails() throws IOException {
        String readme = Files.readString(Samples.REPOSITORY.resolve("README.md"));
        Matcher block = Pattern.compile("```ring\n(.*?)```", Pattern.DOTALL).matcher(readme);
        assertThat(block.find()).isTrue();

        Ran ran = Ran.command("run", Samples.file(folder, "first-frost.ring", block.group(1)));

        assertThat(ran.err()).isEmpty();
        assertThat(ran.exitCode()).isZero();
        assertThat(ran.out()).contains("none of ", " checks failed", "Weights of the finished parts", "caution: ");
        assertThat(ran.out()).doesNotContain("failed: ");
    }

    @Test
    void the_example_runs() {
        Ran ran = Ran.command("run", Samples.HARBOUR_LIGHT, "--out", folder);

        assertThat(ran.err()).doesNotContain("error ");
        assertThat(ran.exitCode()).isZero();
        assertThat(files()).containsExactly("harbour-light.html", "harbour-light.ipynb");
        assertThat(ran.out()).contains("Harbour light", "shank", "stripe", "collar", "lights", "2 passed, 0 failed");
    }

    /** All files below the folder, in order. */
    private List<String> files() {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .map(path -> folder.relativize(path).toString())
                    .sorted()
                    .toList();
        } catch (IOException failure) {
            throw new AssertionError(failure);
        }
    }
}

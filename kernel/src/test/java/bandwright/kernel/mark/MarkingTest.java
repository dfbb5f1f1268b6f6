// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.mark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.dsl.source.SourceText;
import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

class MarkingTest {
    private static final SourceText KEY = new SourceText("key.ring", """
            require width(shank) >= 4 mm because "[3] level with the other"
            require count(lights) = 40 because "[1.5 points] forty of them"
            require weight(ring) < 100 g
            """);

    @TempDir
    Path folder;

    private Marked marked(String name, String text) {
        return Marking.of(Samples.file(folder, name, text), KEY);
    }

    @Test
    void a_key_has_points_in_front_of_its_reasons() {
        Key key = Key.read(KEY, 2);

        assertThat(key.lines()).extracting(Key.Line::points).containsExactly(3.0, 1.5, 2.0);
        assertThat(key.lines())
                .extracting(Key.Line::reason)
                .containsExactly("level with the other", "forty of them", "");
        assertThat(key.points()).isEqualTo(6.5);
        assertThat(Key.read(new SourceText("key.ring", "a = 1 mm\n"), 1).diagnostics())
                .hasSize(1);
    }

    @Test
    void points_may_be_fractions() {
        SourceText text = new SourceText("key.ring", """
                require 1 < 2 because "[1/2] half"
                require 1 < 2 because "[1 1/2 points] more"
                require 1 < 2 because "[12/8]"
                require 1 < 2 because "[] none"
                """);
        Key key = Key.read(text, 3);

        assertThat(key.lines()).extracting(Key.Line::points).containsExactly(0.5, 1.5, 1.5, 3.0);
        assertThat(key.lines()).extracting(Key.Line::reason).containsExactly("half", "more", "", "[] none");
    }

    @Test
    void a_work_that_is_no_ring_text_could_not_be_read_and_has_no_mark() {
        Key key = Key.read(KEY, 1);
        Marked unreadable = marked("a.ring", Samples.RING + "band band {{\n");
        Marked broken = marked("b.ring", Samples.RING + "more = 1 mm + 2 g\n");
        Map<String, Marked> works = new LinkedHashMap<>();
        works.put("a.ring", unreadable);
        works.put("b.ring", broken);

        assertThat(unreadable.failure()).isEqualTo("could not be read");
        assertThat(unreadable.troubles()).isNotEmpty();
        assertThat(broken.wasMarked()).isTrue();
        assertThat(MarkTable.of(key, works).rows())
                .extracting(row -> row.get(1) + " " + row.get(2))
                .containsExactly("could not be read ", "marked 0");
    }

    @Test
    void lines_pass_or_fail_and_a_name_that_is_missing_is_told() {
        Marked marked = marked("a.ring", Samples.RING + "require 1 mm > 2 mm\nrequire 1 mm < 2 mm\n");
        Key key = Key.read(KEY, 1);

        assertThat(marked.wasMarked()).isTrue();
        assertThat(marked.key()).extracting(Judgement::passed).containsExactly(true, false, true);
        assertThat(marked.key().get(1).says()).contains("lights");
        assertThat(marked.points(key)).isEqualTo(4);
        assertThat(marked.own()).extracting(Judgement::passed).containsExactly(false, true);
    }

    @Test
    void the_same_condition_as_in_the_key_counts_for_itself_and_the_key_changes_nothing() {
        Marked marked = marked("a.ring", Samples.RING + "require width(shank) >= 4 mm\n");

        assertThat(marked.own()).hasSize(1);
        assertThat(marked.key()).hasSize(3);
    }

    @Test
    void a_cell_in_java_is_not_run_and_told() {
        Path reached = folder.resolve("reached");
        String java = "java\njava.nio.file.Files.writeString(java.nio.file.Path.of('" + reached
                + "'), 'x');".replace('\'', '"');
        Marked marked = marked(
                "a.ipynb",
                Samples.notebook(
                        5,
                        "{}",
                        Samples.code("a", Samples.RING.strip()),
                        Samples.code("b", java.replace("\\", "\\\\"))));

        assertThat(reached).doesNotExist();
        assertThat(marked.javaCells()).isEqualTo(1);
        assertThat(marked.troubles()).anyMatch(told -> told.contains("cell 2 is in Java, which is not run here"));
        assertThat(marked.key().get(0).passed()).isTrue();
    }

    @Test
    void what_exports_asks_or_never_ends_is_not_done() throws IOException {
        Marked marked = marked(
                "a.ring",
                Samples.RING
                        + "export \"stolen.stl\"\nsheet \"stolen.pdf\"\n"
                        + "vary a from 3 mm to 5 mm step 0.0001 mm { wall(shank) }\n");

        assertThat(marked.key().get(0).passed()).isTrue();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("a.ring"));
        }
    }

    @Test
    void broken_and_hostile_works_are_told_and_do_not_throw() throws IOException {
        assertThat(marked("a.ipynb", "{\"cells\": [").failure()).startsWith("a.ipynb is not valid JSON");
        assertThat(marked("b.ipynb", "[".repeat(100_000)).failure()).contains("not valid JSON");
        assertThat(marked("c.ring", "a = " + "(".repeat(50_000)).errors()).isEqualTo(1);
        assertThat(marked("d.ring", "").wasMarked()).isTrue();
        Files.write(folder.resolve("e.ring"), new byte[20_000_001]);
        assertThat(Marking.of(folder.resolve("e.ring"), KEY).failure()).isEqualTo("e.ring is larger than 20 MB");
        Marked tooLong = marked("f.ring", "title \"" + "x".repeat(100_000) + "\"\nshow nothing-here +\n");
        assertThat(MarkedJson.write(tooLong).length()).isLessThan(10_000);
    }

    @Test
    void what_a_process_says_is_read_back() throws Exception {
        Marked marked =
                marked("a.ring", Samples.RING + "title \"<b> \\u0001 \u00e4\"\nrequire a >= 5 mm\nb = 1 mm + 2 g\n");

        assertThat(MarkedJson.read(MarkedJson.write(marked))).isEqualTo(marked);
    }

    @Test
    void a_spreadsheet_takes_no_name_for_a_formula() {
        Map<String, Marked> works = new LinkedHashMap<>();
        works.put("=HYPERLINK(1).ring", marked("a.ring", Samples.RING));
        works.put("b, c.ring", Marked.not("stopped"));

        String csv = MarkTable.of(Key.read(KEY, 1), works).csv();

        assertThat(csv.lines().toList())
                .hasSize(3)
                .anyMatch(line -> line.startsWith("./=HYPERLINK(1).ring,marked,4,5.5,0,0,0,0,3,0,1"))
                .anyMatch(line -> line.startsWith("\"b, c.ring\",stopped,,5.5,"));
    }

    @Test
    void works_are_found_in_order_without_links_hidden_ones_and_the_key() throws IOException {
        Path outside = Samples.file(Files.createDirectory(folder.resolve("elsewhere")), "secret.ring", "a = 1 mm\n");
        Path group = Files.createDirectory(folder.resolve("class"));
        Path key = Samples.file(group, "key.ring", KEY.text());
        Samples.file(group, "b \u001b[31m.ring", "");
        Samples.file(Files.createDirectory(group.resolve("anna")), "Ring.IPYNB", "");
        Samples.file(Files.createDirectory(group.resolve(".ipynb_checkpoints")), "c.ring", "");
        Files.createSymbolicLink(group.resolve("link.ring"), outside);
        Files.createSymbolicLink(group.resolve("folder"), outside.getParent());

        List<Works.Work> works = Works.in(group, key);

        assertThat(works)
                .extracting(Works.Work::name)
                .containsExactly("anna/Ring.IPYNB", "b \uFFFD[31m.ring", "link.ring");
        assertThat(works).extracting(Works.Work::isLink).containsExactly(false, false, true);
    }
}

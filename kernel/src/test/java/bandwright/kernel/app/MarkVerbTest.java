// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

/** Marks a class with real processes. */
class MarkVerbTest {
    private static final String KEY = """
            require width(shank) >= 4 mm because "[3] wide enough"
            require weight(ring) < 100 g because "light enough"
            """;

    @TempDir
    Path folder;

    private Path key() {
        return Samples.file(folder, "key.ring", KEY);
    }

    private Path group() throws IOException {
        return Files.createDirectories(folder.resolve("group"));
    }

    @Test
    void good_broken_and_hostile_works_are_each_marked_alone() throws Exception {
        Path group = group();
        Path reached = folder.resolve("reached");
        String java = "java\njava.nio.file.Files.writeString(java.nio.file.Path.of('" + reached
                + "'), 'x');".replace('\'', '"');
        Samples.file(group, "=1+1.ring", Samples.RING);
        Samples.file(group, "broken.ipynb", "{");
        Samples.file(
                group,
                "hostile.ipynb",
                Samples.notebook(
                        5,
                        "{}",
                        Samples.code("a", "title \"<script>alert(1)</script>\"\n" + Samples.RING.strip()),
                        Samples.code(
                                "b", "export \"stolen.stl\"\nvary a from 3 mm to 5 mm step 0.0001 mm { wall(shank) }"),
                        Samples.code("c", java.replace("\\", "\\\\"))));
        Files.createSymbolicLink(group.resolve("link.ring"), key());

        Ran ran = Ran.command("mark", group, "--with", key(), "--seconds", 300);

        assertThat(ran.err()).isEmpty();
        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(reached).doesNotExist();
        assertThat(group.resolve("stolen.stl")).doesNotExist();
        List<String> csv = Files.readAllLines(group.resolve("marks.csv"));
        assertThat(csv.get(0))
                .isEqualTo("file,outcome,points,of,own passed,own failed,cells with errors,\"cells in Java, not run\","
                        + "1: width(shank) >= 4 mm \u2013 wide enough,2: weight(ring) < 100 g \u2013 light enough");
        assertThat(csv.get(1)).isEqualTo("./=1+1.ring,marked,4,4,0,0,0,0,3,1");
        assertThat(csv.get(2))
                .startsWith("broken.ipynb,\"broken.ipynb is not valid JSON")
                .endsWith(",,4,0,0,0,0,,");
        assertThat(csv.get(3)).isEqualTo("hostile.ipynb,marked,4,4,0,0,0,1,3,1");
        assertThat(csv.get(4)).startsWith("link.ring,\"not read: it is a link");
        String page = Files.readString(group.resolve("marks.html"));
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page)));
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(page).contains("&lt;script&gt;alert(1)&lt;/script&gt;").doesNotContain(folder.toString());

        Ran again = Ran.command("mark", group, "--with", key(), "--seconds", 300, "--out", folder.resolve("again"));

        assertThat(again.exitCode()).isEqualTo(1);
        assertThat(folder.resolve("again").resolve("marks.html")).hasContent(page);
        assertThat(Files.readAllLines(folder.resolve("again").resolve("marks.csv")))
                .isEqualTo(csv);
    }

    @Test
    void a_work_that_takes_too_long_is_stopped() throws IOException {
        // Some hundred bores, none like another.
        Samples.file(group(), "endless.ring", """
                profile wide = flat(width: 6 mm, height: 2 mm, edge: 0.2 mm)
                band shank { finger US 7  profile wide  metal silver-925 }
                stone-row lights on shank {
                  stone round diamond 0.5 mm
                  around 300 deg centred 7 deg
                  spacing 0.05 mm
                  sink 0.05 mm
                  across -2 mm, -1.4 mm, -0.8 mm, -0.2 mm, 0.4 mm, 1 mm, 1.6 mm, 2.2 mm
                }
                cut seats for lights from shank { hole 0.3 mm  bearing 0.1 mm  clearance 0.01 mm }
                """);

        Ran ran = Ran.command("mark", group(), "--with", key(), "--seconds", 1);

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.out()).contains("1 of 1  endless.ring  stopped: it took longer than 1 second\n");
    }

    @Test
    void a_key_that_is_none_and_an_empty_folder_are_told() throws IOException {
        Path making = Samples.file(folder, "making.ring", "a = 4 mm\n");
        Path empty = Samples.file(folder, "empty.ring", "# nothing\n");

        assertThat(Ran.command("mark", group(), "--with", making).err())
                .contains("a key holds require lines, and this is none", "making.ring, line 1");
        assertThat(Ran.command("mark", group(), "--with", empty).err()).contains("holds no require line");
        assertThat(Ran.command("mark", group(), "--with", key()).err()).contains("holds no .ipynb notebook");
        assertThat(Ran.command("mark", group(), "--with", folder.resolve("none.ring"))
                        .exitCode())
                .isEqualTo(2);
    }

    @Test
    void a_report_that_was_handed_in_as_a_link_is_left_alone() throws IOException {
        Path precious = Samples.file(folder, "precious.txt", "mine");
        Samples.file(group(), "a.ring", Samples.RING);
        Files.createSymbolicLink(group().resolve("marks.html"), precious);

        Ran ran = Ran.command("mark", group(), "--with", key());

        assertThat(ran.exitCode()).isEqualTo(2);
        assertThat(ran.err()).contains("is not a plain file");
        assertThat(precious).hasContent("mine");
    }
}

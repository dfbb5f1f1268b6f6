// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

class CompareVerbTest {
    @TempDir
    Path folder;

    private Path one() {
        return Samples.file(folder, "one.ring", Samples.RING);
    }

    private Path other() {
        return Samples.file(folder, "other.ring", Samples.RING.replace("4 mm", "5 mm") + "title \"<b>&\"\n");
    }

    @Test
    void values_and_measures_stand_side_by_side_with_their_difference() {
        Ran ran = Ran.command("compare", one(), other());

        assertThat(ran.exitCode()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .containsPattern("a +4 mm +5 mm +\\+1 mm +\\+25 %")
                .containsPattern("width\\(shank\\) +4 mm +5 mm")
                .contains("one.ring and other.ring: ");
    }

    @Test
    void machines_get_json_and_csv() {
        assertThat(Ran.command("compare", one(), one(), "--format", "json").out())
                .contains("\"right\": \"" + one() + " (second)\"", "\"same\": true")
                .doesNotContain("\"same\": false");
        assertThat(Ran.command("compare", one(), other(), "--format", "csv").out())
                .startsWith(
                        "group,what,one.ring,other.ring,difference,per cent\ndefinitions,a,4 mm,5 mm,+1 mm,+25 %\n");
    }

    @Test
    void the_page_has_the_sections_one_over_the_other_and_is_the_same_each_time() throws Exception {
        Path page = folder.resolve("page.html");
        Ran.command("compare", one(), other(), "--out", page);
        String first = Files.readString(page);
        Ran.command("compare", one(), other(), "--out", page);

        assertThat(page).hasContent(first);
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(first)));
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(document.getElementsByTagName("svg").getLength()).isEqualTo(1);
        assertThat(first).contains("Sections at 0 deg, one over the other");
    }

    @Test
    void an_error_gives_one_and_the_input_is_never_overwritten() throws IOException {
        Path bad = Samples.file(folder, "bad.ring", "a = 1 mm + 2 g\n");

        Ran ran = Ran.command("compare", one(), bad);

        assertThat(ran.exitCode()).isEqualTo(1);
        assertThat(ran.err())
                .contains("unit-mismatch", "bad.ring has 1 cell with an error", "in bad.ring there is no ring");
        assertThat(ran.out()).containsPattern("weight\\(shank\\).*only in one.ring");
        assertThat(Ran.command("compare", one(), other(), "--out", one()).exitCode())
                .isEqualTo(2);
        assertThat(one()).hasContent(Samples.RING);
    }

    @Test
    void cells_in_java_are_run_only_when_asked() {
        Path java = Samples.file(
                folder,
                "java.ipynb",
                Samples.notebook(
                        5,
                        "{}",
                        Samples.code("a", Samples.RING.strip()),
                        Samples.code("b", "java\ndesign.set(\"b\", mm(3));")));

        assertThat(Ran.command("compare", one(), java).err()).contains("cell 2 is in Java, which is not run here");
        Ran ran = Ran.command("compare", one(), java, "--java");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).containsPattern("b +3 mm +only in java.ipynb");
    }
}

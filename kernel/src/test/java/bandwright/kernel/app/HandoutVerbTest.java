// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.kernel.Samples;

import static org.assertj.core.api.Assertions.assertThat;

class HandoutVerbTest {
    private static final String NOTEBOOK = Samples.notebook(
            5,
            "{}",
            "{\"cell_type\": \"markdown\", \"id\": \"m\", \"metadata\": {}, \"source\": \"# A band & more\\n\\nWords, and\\n\\n"
                    + "1. one\\n2. two\\n\\n## Then\\n\\n```\\n  code\\n```\"}",
            Samples.code("a", Samples.RING.strip()),
            tagged("b", "solution", "answer = 7.125 mm"),
            tagged("c", "teacher", "export \\\"secret.stl\\\""),
            Samples.code("d", "show answer"),
            Samples.code("e", "view ring\nshow section of ring at 0 deg\nshow weights"));

    @TempDir
    Path folder;

    private static String tagged(String id, String tag, String source) {
        return "{\"cell_type\": \"code\", \"id\": \"" + id + "\", \"metadata\": {\"tags\": [\"" + tag
                + "\"]}, \"execution_count\": null, \"outputs\": [], \"source\": \"" + source + "\"}";
    }

    private Path input() {
        return Samples.file(folder, "ring.ipynb", NOTEBOOK);
    }

    @Test
    void a_students_copy_has_no_solutions_and_says_what_waits() throws IOException {
        Ran ran = Ran.command("handout", input());

        assertThat(ran.exitCode()).isZero();
        assertThat(ran.out())
                .contains("left out  2 cells tagged solution or teacher; without an answer now: cell 2")
                .contains(
                        "wrote  " + folder.resolve("ring.handout.html"),
                        "wrote  " + folder.resolve("ring.handout.pdf"));
        String page = Files.readString(folder.resolve("ring.handout.html"));
        assertThat(page)
                .doesNotContain("7.125 mm")
                .doesNotContain("secret")
                .contains("show answer", "<script type=\"application/json\">", "<h1>A band &amp; more</h1>");
        byte[] pdf = Files.readAllBytes(folder.resolve("ring.handout.pdf"));
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        try (PDDocument pages = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(pages))
                    .as("told at its cell, and not again at the end")
                    .containsOnlyOnce("nothing defines answer yet");
        }
        assertThat(folder.resolve("secret.stl")).doesNotExist();
        assertThat(folder.resolve("ring.handout.ipynb"))
                .content()
                .contains("show answer", "\"execution_count\": null")
                .doesNotContain("7.125 mm", "secret", "\"output_type\"");

        Ran.command("handout", input(), "--quiet");

        assertThat(Files.readAllBytes(folder.resolve("ring.handout.pdf"))).isEqualTo(pdf);
        assertThat(folder.resolve("ring.handout.html")).hasContent(page);
        assertThat(input()).hasContent(NOTEBOOK);
    }

    @Test
    void with_solutions_all_is_there_and_marked_and_nothing_is_exported() throws IOException {
        Path out = folder.resolve("made");

        Ran ran = Ran.command("handout", input(), "--solutions", "--out", out, "--paper", "letter", "--quiet");

        assertThat(ran).isEqualTo(new Ran(0, "", ""));
        assertThat(Files.readString(out.resolve("ring.solutions.html")))
                .contains(
                        "7.125 mm", "<p class=\"for-whom\">Solution</p>", "<p class=\"for-whom\">For the teacher</p>");
        assertThat(Files.size(out.resolve("ring.solutions.pdf"))).isPositive();
        assertThat(out.resolve("secret.stl")).doesNotExist();
    }

    @Test
    void a_cell_with_an_error_gives_one_and_a_failed_condition_none() {
        Path failing = Samples.file(folder, "a.ring", Samples.RING + "require 1 mm > 2 mm\n");
        Path wrong = Samples.file(folder, "b.ring", "a = 1 mm + 2 g\n");

        assertThat(Ran.command("handout", failing).exitCode()).isZero();
        assertThat(Ran.command("handout", failing, "--solutions").exitCode()).isEqualTo(3);
        assertThat(Ran.command("handout", wrong).exitCode()).isEqualTo(1);
        assertThat(Ran.command("handout", folder.resolve("none.ring")).exitCode())
                .isEqualTo(2);
        assertThat(Ran.command("handout", failing, "--paper", "b5").exitCode()).isEqualTo(2);
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.dsl.export.Tool;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.source.SourceText;

import static org.assertj.core.api.Assertions.assertThat;

/** The bench sheet, read by programs that are not ours (qpdf; pdftotext of poppler-utils). */
class SheetTest {
    private static final String RING = GoldenFiles.cases("workbench").stream()
            .filter(input -> input.name().equals("harbour-light"))
            .findFirst()
            .orElseThrow()
            .text();

    @TempDir
    private Path folder;

    private static Outcome run(String question) {
        Workbench ring =
                Workbench.empty().define("ring", new SourceText("ring", RING)).workbench();
        return ring.run("sheet", new SourceText("sheet", question));
    }

    private static byte[] sheet(String question) {
        Outcome outcome = run(question);
        assertThat(outcome.diagnostics()).isEmpty();
        Answer.Exported exported = (Answer.Exported) outcome.answers().get(0);
        assertThat(exported.files()).hasSize(1);
        return exported.files().get(0).bytes();
    }

    private String words(byte[] file) throws Exception {
        Tool.need("pdftotext", "-v");
        Path path = Files.write(folder.resolve("sheet.pdf"), file);
        Tool.run(List.of("pdftotext", "-layout", path.toString(), path + ".txt"));
        return Files.readString(Path.of(path + ".txt"));
    }

    @Test
    void qpdf_finds_nothing_wrong() throws Exception {
        Tool.need("qpdf", "--version");
        Path path = Files.write(folder.resolve("sheet.pdf"), sheet("sheet \"sheet.pdf\""));
        assertThat(Tool.run(List.of("qpdf", "--check", path.toString())))
                .contains("No syntax or stream encoding errors found")
                .doesNotContain("WARNING");
    }

    @Test
    void the_numbers_of_the_ring_are_found_in_the_sheet() throws Exception {
        String question = "sheet \"sheet.pdf\" { metals platinum-950-ru  spares 3  shrinkage 1.6 % }";
        String words = words(sheet(question));
        Report report = Workbench.empty()
                .define("ring", new SourceText("ring", RING))
                .workbench()
                .report();
        assertThat(words)
                .contains("Harbour light", report.fingerprint(), "ISO 57", "18.14 mm across")
                .contains("platinum-950-ru", "pattern in wax", "43");
        report.parts()
                .forEach(part ->
                        assertThat(words).contains(bandwright.dsl.quantity.QuantityFormat.number(part.weightG(), 3)));
        report.checks()
                .forEach(check -> assertThat(words).contains(check.title().split(" ", -1)[0]));
        for (String part : List.of(
                "Drawings",
                "Parts and weights",
                "Were it all of one metal",
                "Casting",
                "Stones to order",
                "Order of work",
                "Cautions",
                "Room for engraving inside",
                "Finger size and sizing",
                "Care",
                "Checks",
                "What must hold",
                "Decisions and reasons")) {
            assertThat(words).contains(part);
        }
    }

    @Test
    void the_same_ring_gives_the_same_bytes() {
        assertThat(sheet("sheet \"sheet.pdf\"")).isEqualTo(sheet("sheet \"sheet.pdf\""));
    }

    @Test
    void drawings_are_lines_and_the_only_pictures_are_the_two_renders() throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet("sheet \"sheet.pdf\" { paper letter }"))) {
            int pictures = 0;
            for (var page : document.getPages()) {
                for (var name : page.getResources().getXObjectNames()) {
                    pictures += page.getResources().isImageXObject(name) ? 1 : 0;
                }
                assertThat(page.getMediaBox().getHeight()).isEqualTo(792);
                page.getResources().getFontNames().forEach(font -> {
                    try {
                        assertThat(page.getResources().getFont(font).isEmbedded())
                                .isTrue();
                    } catch (IOException e) {
                        throw new java.io.UncheckedIOException(e);
                    }
                });
            }
            assertThat(pictures).isEqualTo(2);
        }
    }

    @Test
    void what_fails_is_told_on_the_first_page() throws Exception {
        String first = words(sheet("sheet \"sheet.pdf\"")).split("page 1 of", 2)[0];
        Workbench ring =
                Workbench.empty().define("ring", new SourceText("ring", RING)).workbench();
        assertThat(ring.findings().failedInShort()).isPresent();
        assertThat(first).contains("Before metal is poured: ");
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import bandwright.dsl.check.Finding;
import bandwright.dsl.export.Tool;
import bandwright.dsl.golden.GoldenFiles;
import bandwright.dsl.quantity.Quantity;
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
        assertThat(report.checks()).hasSizeGreaterThan(30);
        report.checks()
                .forEach(check -> assertThat(hasRow(words, check))
                        .as(check.title() + " " + check.measured())
                        .isTrue());
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

    /** A row that begins with the whole title, broken into lines or not, and has value and verdict on its first line. */
    private static boolean hasRow(String words, Finding check) {
        String title = Stream.of(check.title().split(" ", -1))
                .map(Pattern::quote)
                .collect(Collectors.joining("(?: |(?=[^\\n]*\\n)[^\\n]*\\n)"));
        Quantity measured = check.measured();
        // The reader leaves out a narrow space between a digit and a sign.
        String value = measured == null
                ? ""
                : Stream.of(measured.toString().split(" ", -1))
                        .map(Pattern::quote)
                        .collect(Collectors.joining(" ?"));
        String verdict = check.verdict().word().split(" ", -1)[0];
        return Pattern.compile("(?m)^(?=([^\\n]*))" + title)
                .matcher(words)
                .results()
                .map(found -> found.group(1))
                .anyMatch(line -> (line + " ").matches(".*\\s{2}" + value + "\\s.*\\s" + verdict + "\\s.*"));
    }

    /** In two Java machines: nothing of the bytes hangs on what a process happens to hold. */
    @Test
    void the_same_ring_gives_the_same_bytes_in_another_process() throws Exception {
        Path path = folder.resolve("other.pdf");
        String said = Tool.run(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                SheetTest.class.getName(),
                path.toString()));
        assertThat(said).doesNotContain("Exception");
        assertThat(Files.readAllBytes(path)).isEqualTo(sheet("sheet \"sheet.pdf\""));
    }

    /** The other process. */
    public static void main(String[] arguments) throws IOException {
        Files.write(Path.of(arguments[0]), sheet("sheet \"sheet.pdf\""));
    }

    @Test
    void the_first_page_has_pictures_with_captions_and_views() throws Exception {
        String first = words(sheet("sheet \"sheet.pdf\"")).split("page 1 of", 2)[0];
        assertThat(first)
                .contains("As set", "As cast, for the setter", "Views of Harbour light", "first-angle projection");
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

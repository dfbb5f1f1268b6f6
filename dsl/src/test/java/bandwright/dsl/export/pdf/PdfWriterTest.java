// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.plane.Arc;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.drawing.Drawing;
import bandwright.dsl.view.drawing.Mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Pages as a reader gets them: what is written, where it breaks, and that a millimetre is one. */
class PdfWriterTest {
    /** Ten pixels a millimetre. */
    private static final float FINE = 254;

    private static byte[] pdf(Paper paper, PageItem... items) {
        return PdfWriter.write(new PaperDocument("Title", "foot", 7, paper, List.of(items)));
    }

    private static String text(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static BufferedImage picture(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFRenderer(document).renderImageWithDPI(0, FINE);
        }
    }

    private static int[] darkColumns(BufferedImage picture) {
        return IntStream.range(0, picture.getWidth())
                .filter(x -> IntStream.range(0, picture.getHeight()).anyMatch(y -> isDark(picture, x, y)))
                .toArray();
    }

    private static boolean isDark(BufferedImage picture, int x, int y) {
        return (picture.getRGB(x, y) >> 8 & 255) < 128;
    }

    @Test
    void the_same_pages_give_the_same_bytes() {
        PageItem heading = new PageItem.Heading("One");
        assertThat(pdf(Paper.A4, heading, new PageItem.CheckBar()))
                .isEqualTo(pdf(Paper.A4, heading, new PageItem.CheckBar()));
    }

    @Test
    void paper_has_its_published_size() throws IOException {
        // ISO 216: 210 mm by 297 mm; ANSI/ASME Y14.1 size A: 8.5 inches by 11 inches.
        for (Paper paper : Paper.values()) {
            try (PDDocument document = Loader.loadPDF(pdf(paper))) {
                var box = document.getPage(0).getMediaBox();
                boolean a4 = paper == Paper.A4;
                assertThat(box.getWidth()).isCloseTo(a4 ? 595.2756f : 612, within(0.001f));
                assertThat(box.getHeight()).isCloseTo(a4 ? 841.8898f : 792, within(0.001f));
            }
        }
    }

    @Test
    void the_check_bar_is_fifty_millimetres_long() throws IOException {
        BufferedImage picture = picture(pdf(Paper.A4, new PageItem.CheckBar()));
        int longest = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < picture.getWidth(); x++) {
                run = isDark(picture, x, y) ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        // The end ticks stand out by half their width, 0.125 mm, on either side.
        assertThat(longest).isBetween(499, 504);
    }

    @Test
    void a_drawing_keeps_its_scale_and_its_circles_are_round() throws IOException {
        Point right = new Point(3, 0);
        Point left = new Point(-3, 0);
        Point centre = new Point(0, 0);
        Outline circle =
                new Outline(List.of(Arc.around(centre, right, left, true), Arc.around(centre, left, right, true)));
        Drawing drawing = new Drawing(
                "", "", new Bounds(-4, -4, 4, 4), 10, List.of(new Mark.Shape(Region.of(circle), 0, Mark.NONE, 0)));
        BufferedImage picture =
                picture(PdfWriter.write(new PaperDocument(" ", " ", 7, Paper.A4, List.of(new PageItem.Plan(drawing)))));
        int[] columns = darkColumns(picture);
        // Ten pixels a millimetre of paper, ten millimetres of paper for one of the thing; the page's number is
        // narrower.
        int middle = (15 + 40) * 10;
        long dark = 0;
        for (int y = 0; y < picture.getHeight() / 2; y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                dark += isDark(picture, x, y) ? 1 : 0;
            }
        }
        assertThat(columns[0]).isBetween(middle - 301, middle - 299);
        assertThat((double) dark).isCloseTo(StrictMath.PI * 300 * 300, within(300.0));
    }

    @Test
    void words_can_be_searched_and_signs_without_a_letter_are_question_marks() throws IOException {
        String said = text(pdf(Paper.A4, new PageItem.Paragraph("Größe 57 \u2013 0.5 mm\u00b2, \ud83d\udc8d ring")));
        assertThat(said).contains("Größe 57 \u2013 0.5 mm\u00b2, ? ring").contains("page 1 of 1");
    }

    @Test
    void a_long_table_repeats_its_head_on_every_page_and_loses_no_row() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 150; i++) {
            rows.add(List.of("row-" + i, "a text that is long enough to be broken ".repeat(i % 7 + 1)));
        }
        Table table = new Table(
                "", List.of(Table.Column.words("name"), Table.Column.words("what is told")), rows, List.of("a note"));
        byte[] file = pdf(Paper.A4, new PageItem.Grid(table));
        String said = text(file);
        for (int i = 0; i < 150; i++) {
            assertThat(said).containsOnlyOnce("row-" + i + " ");
        }
        try (PDDocument document = Loader.loadPDF(file)) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(3);
            assertThat(said.split("what is told", -1)).hasSize(pages + 1);
            assertThat(said).contains("page " + pages + " of " + pages);
        }
    }

    @Test
    void a_row_taller_than_a_page_and_a_word_wider_than_a_column_are_broken() throws IOException {
        Table table = new Table(
                "",
                List.of(Table.Column.words("a"), Table.Column.words("b")),
                List.of(List.of("x".repeat(300), "word ".repeat(6000)), List.of("last", "row")),
                List.of());
        String said = text(pdf(Paper.LETTER, new PageItem.Grid(table)));
        assertThat(said).contains("last");
        assertThat(said.split("word", -1)).hasSize(6001);
        assertThat(said.chars().filter(sign -> sign == 'x').count()).isEqualTo(300);
    }

    @Test
    void nothing_leaves_the_margins() throws IOException {
        Table wide = new Table(
                "",
                IntStream.range(0, 14)
                        .mapToObj(i -> Table.Column.words("column " + i))
                        .toList(),
                List.of(IntStream.range(0, 14).mapToObj(i -> "text-number-" + i).toList()),
                List.of("note ".repeat(80)));
        int[] columns = darkColumns(picture(pdf(Paper.A4, new PageItem.Grid(wide))));
        assertThat(columns[0]).isGreaterThanOrEqualTo(148);
        assertThat(columns[columns.length - 1]).isLessThanOrEqualTo(1952);
    }

    @Test
    void code_keeps_its_lines_and_lists_their_marks() throws IOException {
        String text = text(pdf(
                Paper.A4,
                new PageItem.Entry("1.", "measure the finger", 1),
                new PageItem.Code("7", "band shank {\n  finger   ISO 57\n  profile  dome\n}\n" + "long ".repeat(80))));

        assertThat(text.lines())
                .contains("1. measure the finger", "7 band shank {", "finger   ISO 57".replace("   ", " "), "}");
        assertThat(text.lines().filter(line -> line.startsWith("long")).count()).isGreaterThan(1);
    }

    @Test
    void columns_of_code_line_up() throws IOException {
        try (PDDocument document = new PDDocument()) {
            Letters letters = new Letters(document);
            CodeLine layout = new CodeLine(letters, 3, 100);
            List<CodeLine.Run> one = layout.rows("  finger   ISO 57").get(0);
            List<CodeLine.Run> other = layout.rows("  metal    silver-925").get(0);

            assertThat(one).extracting(CodeLine.Run::text).containsExactly("finger", "ISO 57");
            assertThat(one.get(1).left()).isEqualTo(other.get(1).left());
            assertThat(one.get(0).left()).isPositive();
            String early = "m".repeat(25);
            assertThat(layout.rows(early + "   late").get(0).get(1).left()).isGreaterThan(letters.width(early, 3));
            assertThat(layout.rows("")).hasSize(1);
            assertThat(layout.rows("x".repeat(400)).size()).isGreaterThan(1);
        }
    }

    @Test
    void a_drawing_too_large_for_its_paper_shrinks_and_another_stays() {
        Drawing drawing = new Drawing("t", "d", new Bounds(0, 0, 20, 10), 10, List.of());

        assertThat(drawing.within(200, 100)).isSameAs(drawing);
        assertThat(drawing.within(100, 100).scale()).isEqualTo(5);
    }

    @Test
    void a_caption_stays_with_its_table() throws IOException {
        List<PageItem> items = new ArrayList<>();
        IntStream.range(0, 43).forEach(number -> items.add(new PageItem.Paragraph("line " + number)));
        items.add(new PageItem.Caption("What it is"));
        items.add(new PageItem.Grid(new Table("", List.of(Table.Column.words("a")), List.of(List.of("b")), List.of())));

        byte[] file = pdf(Paper.A4, items.toArray(PageItem[]::new));

        try (PDDocument document = Loader.loadPDF(file)) {
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(first.getText(document)).doesNotContain("What it is").contains("line 30");
        }
    }
}

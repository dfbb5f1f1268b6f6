// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.util.Matrix;

import bandwright.dsl.view.Picture;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.drawing.Drawing;

/** Lets items flow down the pages, and numbers these. All lengths in mm of paper. */
final class PageFlow {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double TITLE = 7;
    private static final double HEADING = 4.6;
    private static final double TEXT = 3.3;
    private static final double CELL = 2.9;
    private static final double NOTE = 2.6;
    private static final double LEADING = 1.32;
    private static final double FOOT = 8;

    /** How far in a list stands. */
    private static final double INDENT = 5.5;

    /** Between items. */
    private static final double SPACE = 3;

    /** What must fit below a heading for it to stay on a page. */
    private static final double COMPANY = 22;

    private static final double BAR = 50;

    private final PDDocument document;
    private final PaperDocument content;
    private final Paper paper;
    private final Letters letters;
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final List<PDPage> pages = new ArrayList<>();
    private final double width;

    private Pen pen;
    private double y;

    PageFlow(PDDocument document, PaperDocument content) throws IOException {
        this.document = document;
        this.content = content;
        paper = content.paper();
        letters = new Letters(document);
        width = paper.usableWidthMm();
        pen = newPage();
    }

    void flow() throws IOException {
        for (String line : letters.lines(content.title(), TITLE, width)) {
            y -= TITLE * LEADING;
            pen.heavy(line, Paper.MARGIN, y + 0.3 * TITLE, TITLE);
        }
        y -= SPACE;
        List<PageItem> items = content.items();
        for (int i = 0; i < items.size(); i++) {
            PageItem item = items.get(i);
            if (item instanceof PageItem.Heading heading) {
                double company = i + 1 < items.size() ? company(items.get(i + 1)) : 0;
                heading(heading.text(), company);
            } else if (item instanceof PageItem.Paragraph paragraph) {
                lines(letters.lines(paragraph.text(), TEXT, width), TEXT, Pen.INK);
                y -= SPACE / 2;
            } else if (item instanceof PageItem.Caption caption) {
                room(TEXT * LEADING + (i + 1 < items.size() ? company(items.get(i + 1)) : 0));
                lines(letters.lines(caption.text(), TEXT, width), TEXT, Pen.INK);
                y -= SPACE / 2;
            } else if (item instanceof PageItem.Entry entry) {
                entry(entry);
            } else if (item instanceof PageItem.Code code) {
                code(code);
            } else if (item instanceof PageItem.Grid grid) {
                grid(grid.table());
            } else if (item instanceof PageItem.Pictures pictures) {
                pictures(pictures);
            } else if (item instanceof PageItem.Plan plan) {
                plan(plan.drawing());
            } else if (item instanceof PageItem.CheckBar) {
                checkBar();
            }
        }
        pen.stream().close();
        document.getDocumentCatalog().setDocumentOutline(outline);
        for (int i = 0; i < pages.size(); i++) {
            foot(pages.get(i), i + 1);
        }
    }

    private Pen newPage() throws IOException {
        PDPage page = new PDPage(
                new PDRectangle((float) (paper.widthMm() * POINTS_PER_MM), (float) (paper.heightMm() * POINTS_PER_MM)));
        document.addPage(page);
        pages.add(page);
        y = paper.heightMm() - Paper.MARGIN;
        PDPageContentStream stream = new PDPageContentStream(document, page);
        stream.transform(Matrix.getScaleInstance((float) POINTS_PER_MM, (float) POINTS_PER_MM));
        return new Pen(stream, letters);
    }

    private void turnPage() throws IOException {
        pen.stream().close();
        pen = newPage();
    }

    private static double bottom() {
        return Paper.MARGIN + FOOT;
    }

    private boolean fits(double height) {
        return y - height >= bottom() - 1e-9;
    }

    /** Begins a new page if what comes does not fit on this one, unless it fits on none. */
    private void room(double height) throws IOException {
        boolean fresh = y > paper.heightMm() - Paper.MARGIN - 1e-9;
        if (!fits(height) && !fresh) {
            turnPage();
        }
    }

    private double company(PageItem next) {
        if (next instanceof PageItem.Plan plan) {
            return height(plan.drawing());
        }
        return next instanceof PageItem.Pictures pictures ? pictureHeight(pictures) : COMPANY;
    }

    private void heading(String text, double company) throws IOException {
        List<String> lines = letters.lines(text, HEADING, width);
        room((1 + lines.size()) * HEADING * LEADING + company);
        y -= SPACE;
        double top = y;
        for (String line : lines) {
            y -= HEADING * LEADING;
            pen.heavy(line, Paper.MARGIN, y + 0.3 * HEADING, HEADING);
        }
        PDPageXYZDestination place = new PDPageXYZDestination();
        place.setPage(pages.get(pages.size() - 1));
        place.setTop((int) (top * POINTS_PER_MM));
        PDOutlineItem entry = new PDOutlineItem();
        entry.setTitle(text);
        entry.setDestination(place);
        outline.addLast(entry);
        y -= 0.6;
        pen.line(Paper.MARGIN, y, Paper.MARGIN + width, y, 0.2, Pen.FAINT);
        y -= SPACE / 2;
    }

    private void lines(List<String> lines, double size, int colour) throws IOException {
        for (String line : lines) {
            room(size * LEADING);
            y -= size * LEADING;
            pen.text(line, Paper.MARGIN, y + 0.3 * size, size, colour);
        }
    }

    private void entry(PageItem.Entry entry) throws IOException {
        double left = Paper.MARGIN + INDENT * entry.depth();
        boolean first = true;
        for (String line : letters.lines(entry.text(), TEXT, width - INDENT * entry.depth())) {
            room(TEXT * LEADING);
            y -= TEXT * LEADING;
            double base = y + 0.3 * TEXT;
            if (first) {
                String mark = letters.settable(entry.mark());
                pen.text(mark, left - 1.2 - letters.width(mark, TEXT), base, TEXT, Pen.INK);
                first = false;
            }
            pen.text(line, left, base, TEXT, Pen.INK);
        }
        y -= SPACE / 4;
    }

    /** Lines beside a rule; where two spaces or more set words apart, they stand apart on paper as well. */
    private void code(PageItem.Code code) throws IOException {
        double left = Paper.MARGIN + 3;
        String number = letters.settable(code.number());
        for (String line : code.text().lines().toList()) {
            for (List<CodeLine.Run> row : new CodeLine(letters, CELL, width - 3).rows(line)) {
                room(CELL * LEADING);
                y -= CELL * LEADING;
                pen.text(number, Paper.MARGIN - 1 - letters.width(number, CELL), y + 0.3 * CELL, CELL, Pen.FAINT);
                number = "";
                pen.line(Paper.MARGIN + 1, y, Paper.MARGIN + 1, y + CELL * LEADING, 0.2, Pen.FAINT);
                for (CodeLine.Run run : row) {
                    pen.text(run.text(), left + run.left(), y + 0.3 * CELL, CELL, Pen.INK);
                }
            }
        }
        y -= SPACE;
    }

    private void grid(Table table) throws IOException {
        double[] widths = Columns.widths(table, letters, CELL, width);
        List<String> names = table.columns().stream().map(Table.Column::heading).toList();
        List<List<String>> head = cells(names, widths);
        room(height(head) + CELL * LEADING * 2);
        row(table, head, widths, true);
        for (List<String> row : table.rows()) {
            List<List<String>> cells = cells(row, widths);
            if (!fits(height(cells))) {
                turnPage();
                row(table, head, widths, true);
            }
            row(table, cells, widths, false);
        }
        y -= SPACE / 2;
        for (String note : table.footnotes()) {
            lines(letters.lines(note, NOTE, width), NOTE, Pen.FAINT);
            y -= 0.4;
        }
        y -= SPACE / 2;
    }

    private List<List<String>> cells(List<String> row, double[] widths) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            cells.add(letters.lines(row.get(i), CELL, widths[i]));
        }
        return cells;
    }

    private static double height(List<List<String>> cells) {
        return lineCount(cells) * CELL * LEADING + 1;
    }

    private static int lineCount(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1);
    }

    private void row(Table table, List<List<String>> cells, double[] widths, boolean head) throws IOException {
        for (int line = 0; line < lineCount(cells); line++) {
            // Only a row that is taller than a page breaks.
            room(CELL * LEADING + 1);
            y -= CELL * LEADING;
            double left = Paper.MARGIN;
            for (int i = 0; i < widths.length; i++) {
                if (line < cells.get(i).size()) {
                    cell(
                            cells.get(i).get(line),
                            left,
                            widths[i],
                            table.columns().get(i).alignment(),
                            head);
                }
                left += widths[i] + Columns.GAP;
            }
        }
        y -= 0.5;
        pen.line(Paper.MARGIN, y, Paper.MARGIN + width, y, head ? 0.3 : 0.08, head ? Pen.INK : Pen.FAINT);
        y -= 0.5;
    }

    private void cell(String text, double left, double room, Table.Alignment alignment, boolean head)
            throws IOException {
        double x = alignment == Table.Alignment.RIGHT ? left + room - letters.width(text, CELL) : left;
        double base = y + 0.3 * CELL;
        if (head) {
            pen.heavy(text, x, base, CELL);
        } else {
            pen.text(text, x, base, CELL, Pen.INK);
        }
    }

    private double pictureWidth(PageItem.Pictures pictures) {
        int count = pictures.pictures().size();
        return Math.min(pictures.mostMm(), (width - SPACE * (count - 1)) / count);
    }

    private double pictureHeight(PageItem.Pictures pictures) {
        double each = pictureWidth(pictures);
        return pictures.pictures().stream()
                        .mapToDouble(picture -> each * picture.height() / picture.width())
                        .max()
                        .orElse(0)
                + captionHeight(pictures);
    }

    private static double captionHeight(PageItem.Pictures pictures) {
        return pictures.captions().isEmpty() ? 0 : CELL * LEADING + 1;
    }

    private void pictures(PageItem.Pictures pictures) throws IOException {
        double height = pictureHeight(pictures);
        room(height);
        double each = pictureWidth(pictures);
        double left = Paper.MARGIN;
        for (int i = 0; i < pictures.pictures().size(); i++) {
            Picture picture = pictures.pictures().get(i);
            double high = each * picture.height() / picture.width();
            PDImageXObject image = PDImageXObject.createFromByteArray(document, picture.png(), null);
            pen.stream().drawImage(image, (float) left, (float) (y - high), (float) each, (float) high);
            if (i < pictures.captions().size()) {
                String caption =
                        letters.lines(pictures.captions().get(i), CELL, each).get(0);
                pen.text(caption, left, y - height + 0.3 * CELL, CELL, Pen.INK);
            }
            left += each + SPACE;
        }
        y -= height + SPACE;
    }

    private static double height(Drawing drawing) {
        return drawing.box().height() * drawing.scale();
    }

    private void plan(Drawing drawing) throws IOException {
        double height = height(drawing);
        room(height);
        new DrawingPen(pen, letters).draw(drawing, Paper.MARGIN, y - height);
        y -= height + SPACE;
    }

    private void checkBar() throws IOException {
        room(CELL * LEADING + 4);
        y -= 4;
        double left = Paper.MARGIN;
        pen.line(left, y, left + BAR, y, 0.25, Pen.INK);
        for (int i = 0; i <= 5; i++) {
            double x = left + BAR * i / 5;
            pen.line(x, y - 1.2, x, y + 1.2, 0.25, Pen.INK);
        }
        pen.text(
                "This line is 50 mm long, ticks every 10 mm. If it is not, print again at 100 %.",
                left + BAR + SPACE, y - 0.3 * CELL, CELL, Pen.INK);
        y -= 2 + SPACE;
    }

    private void foot(PDPage page, int number) throws IOException {
        try (PDPageContentStream stream =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
            stream.transform(Matrix.getScaleInstance((float) POINTS_PER_MM, (float) POINTS_PER_MM));
            Pen foot = new Pen(stream, letters);
            String count = "page " + number + " of " + pages.size();
            double right = Paper.MARGIN + width - letters.width(count, NOTE);
            foot.text(count, right, Paper.MARGIN, NOTE, Pen.FAINT);
            foot.text(
                    letters.lines(content.foot(), NOTE, width - 30).get(0),
                    Paper.MARGIN,
                    Paper.MARGIN,
                    NOTE,
                    Pen.FAINT);
        }
    }
}

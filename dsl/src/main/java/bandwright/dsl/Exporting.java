// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.export.Content;
import bandwright.dsl.export.ExportFile;
import bandwright.dsl.export.FileName;
import bandwright.dsl.export.Format;
import bandwright.dsl.export.Formats;
import bandwright.dsl.export.csv.CsvFormat;
import bandwright.dsl.export.dxf.DxfFormat;
import bandwright.dsl.export.glb.GlbFormat;
import bandwright.dsl.export.pdf.PaperDocument;
import bandwright.dsl.export.pdf.PdfWriter;
import bandwright.dsl.export.stl.StlFormat;
import bandwright.dsl.export.svg.SvgFormat;
import bandwright.dsl.export.threemf.ThreeMfFormat;
import bandwright.dsl.model.Fault;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.Export;
import bandwright.dsl.syntax.ExportProperty;
import bandwright.dsl.syntax.Sheet;
import bandwright.dsl.syntax.Show;
import bandwright.dsl.syntax.ShowSubject;
import bandwright.dsl.syntax.Statement;

/** Answers {@code export}: what the file holds is worked out, made into bytes by its format, and handed on. Writes nothing. */
final class Exporting {
    private static final Formats FORMATS = new Formats(List.of(
            new ThreeMfFormat(), new StlFormat(), new GlbFormat(), new SvgFormat(), new DxfFormat(), new CsvFormat()));

    private static final String SHEET_ENDING = ".pdf";

    /** Makes the content of each kind. */
    interface Maker {
        Content.Model model(@Nullable Block<ExportProperty> block, Span asked);

        /** @param subject a section, a layout or views */
        Content.Plan plan(ShowSubject subject, Span asked);

        /** The table that answers a question. */
        Content.Rows rows(Statement question, @Nullable Block<ExportProperty> block);
    }

    private final SourceText source;
    private final Maker maker;

    Exporting(SourceText source, Maker maker) {
        this.source = source;
        this.maker = maker;
    }

    Answer answer(Export export) {
        Place place = source.place(export.span());
        String name = export.file();
        refuse(name, place);
        Format format = format(name, place);
        Block<ExportProperty> block = export.block();
        check(block, format);
        Content content = content(format.holds(), block, export.span());
        List<ExportFile> files = format.write(name, content);
        return new Answer.Exported(
                files,
                block != null && block.find(ExportProperty.Replace.class) != null,
                String.join("; ", content.words()),
                place);
    }

    /** As {@link #answer}, of a sheet: one kind of file, so its name must end that way. */
    Answer sheet(Sheet sheet, Supplier<PaperDocument> pages) {
        Place place = source.place(sheet.span());
        String name = sheet.file();
        refuse(name, place);
        if (!name.toLowerCase(Locale.ROOT).endsWith(SHEET_ENDING)) {
            throw new Fault(Diagnostic.error("file-kind", place)
                    .with(name)
                    .expected("a name that ends in " + SHEET_ENDING)
                    .build());
        }
        PaperDocument document = pages.get();
        Block<ExportProperty> block = sheet.block();
        return new Answer.Exported(
                List.of(new ExportFile(name, PdfWriter.write(document))),
                block != null && block.find(ExportProperty.Replace.class) != null,
                "the bench sheet of " + document.title() + ", on "
                        + document.paper().word() + " paper, drawings to scale",
                place);
    }

    private static void refuse(String name, Place place) {
        FileName.fault(name).ifPresent(fault -> {
            throw new Fault(
                    Diagnostic.error("file-name", place).with(name, fault).build());
        });
    }

    private static Format format(String name, Place place) {
        return FORMATS.of(name).orElseThrow(() -> {
            String known = FORMATS.endings().stream().map(each -> "." + each).collect(Collectors.joining(", "));
            return new Fault(Diagnostic.error("file-kind", place)
                    .with(name)
                    .expected(
                            "a name that ends in one of " + known + "; a bench sheet is written by: sheet \"ring.pdf\"")
                    .build());
        });
    }

    /** Every property must mean something in such a file. */
    private void check(@Nullable Block<ExportProperty> block, Format format) {
        if (block == null) {
            return;
        }
        List<Diagnostic> faults = new ArrayList<>();
        for (ExportProperty property : block.properties()) {
            if (!means(property, format.holds(), block)) {
                Place place = source.place(property.span());
                faults.add(Diagnostic.error("not-in-file", place)
                        .with(
                                first(place.text()),
                                format.ending(),
                                format.holds().words())
                        .build());
            }
        }
        if (!faults.isEmpty()) {
            throw new Fault(faults);
        }
    }

    private static String first(String text) {
        return text.split("[\\s{]", 2)[0];
    }

    private static boolean means(ExportProperty property, Content.Kind kind, Block<ExportProperty> block) {
        if (property instanceof ExportProperty.Replace) {
            return true;
        }
        return switch (kind) {
            case MODEL -> !(property instanceof ExportProperty.Held);
            case PLAN -> property instanceof ExportProperty.Held held && isPlan(held.question());
            case ROWS ->
                property instanceof ExportProperty.Held held
                        ? !isPlan(held.question())
                        : isPattern(property) && isCasting(question(block));
        };
    }

    private static boolean isPlan(Statement question) {
        return question instanceof Show show
                && (show.subject() instanceof ShowSubject.Section
                        || show.subject() instanceof ShowSubject.Layout
                        || show.subject() instanceof ShowSubject.Views);
    }

    private static boolean isPattern(ExportProperty property) {
        return property instanceof ExportProperty.Shrinkage
                || property instanceof ExportProperty.DirectedShrinkage
                || property instanceof ExportProperty.Stock;
    }

    private static boolean isCasting(@Nullable Statement question) {
        return question instanceof Show show && show.subject() instanceof ShowSubject.Casting;
    }

    private static @Nullable Statement question(@Nullable Block<ExportProperty> block) {
        ExportProperty.Held held = block == null ? null : block.find(ExportProperty.Held.class);
        return held == null ? null : held.question();
    }

    private Content content(Content.Kind kind, @Nullable Block<ExportProperty> block, Span asked) {
        Statement question = question(block);
        return switch (kind) {
            case MODEL -> maker.model(block, asked);
            case PLAN ->
                maker.plan(
                        question instanceof Show show
                                ? show.subject()
                                : new ShowSubject.Section(List.of(), null, asked),
                        asked);
            case ROWS ->
                maker.rows(
                        question == null
                                ? new Show(new ShowSubject.Weights(false, asked), null, null, asked)
                                : question,
                        block);
        };
    }
}

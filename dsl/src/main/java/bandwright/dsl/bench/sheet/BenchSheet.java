// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import bandwright.dsl.bench.Cautions;
import bandwright.dsl.bench.Engraving;
import bandwright.dsl.bench.Sentences;
import bandwright.dsl.bench.Steps;
import bandwright.dsl.check.Findings;
import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.export.pdf.PageItem;
import bandwright.dsl.export.pdf.PaperDocument;
import bandwright.dsl.material.MaterialSource;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.Working;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.measure.Spares;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.view.Table;
import bandwright.dsl.view.render.Camera;
import bandwright.dsl.view.ring.CheckTable;
import bandwright.dsl.view.ring.RingPictures;
import bandwright.dsl.view.ring.RingTables;

/**
 * All that goes to the bench with a ring: what it is, what failed, pictures and drawings, weights and what to order, the order of
 * work with its cautions, sizing and care, every check, and why the design is as it is.
 */
public final class BenchSheet {
    /** The width of a picture: it leaves the views room on the first page, mm. */
    private static final double PICTURE_MM = 72;

    private final Ring ring;
    private final Workshop workshop;
    private final Findings findings;
    private final SheetWishes wishes;
    private final List<PageItem> items = new ArrayList<>();

    private BenchSheet(Ring ring, Workshop workshop, Findings findings, SheetWishes wishes) {
        this.ring = ring;
        this.workshop = workshop;
        this.findings = findings;
        this.wishes = wishes;
    }

    /** The sheet's pages before they are laid out. */
    public static PaperDocument of(
            Ring ring, Workshop workshop, Findings findings, SheetStory story, SheetWishes wishes) {
        BenchSheet sheet = new BenchSheet(ring, workshop, findings, wishes);
        sheet.fill(story);
        String title = ring.design().title().orElse("ring");
        return new PaperDocument(
                title,
                Sentences.of("sheet.foot", title, story.fingerprint()),
                Long.parseUnsignedLong(story.fingerprint(), 16),
                wishes.paper(),
                sheet.items);
    }

    private void fill(SheetStory story) {
        grid(facts(story.fingerprint()));
        findings.failedInShort().ifPresent(failed -> paragraph(Sentences.of("sheet.failed", failed)));
        Set<String> parts = ring.sections().stream().map(PartSection::name).collect(Collectors.toSet());
        boolean bare = ring.design().stoneRows().isEmpty();
        items.add(new PageItem.Pictures(
                List.of(
                        RingPictures.picture(ring, parts, Camera.THREE_QUARTER, "three-quarter"),
                        bare
                                ? RingPictures.picture(ring, parts, Camera.FRONT, "front")
                                : RingPictures.asCast(ring, parts, Camera.THREE_QUARTER, "three-quarter")),
                PICTURE_MM,
                List.of(
                        Sentences.of(bare ? "sheet.three-quarter" : "sheet.set"),
                        Sentences.of(bare ? "sheet.front" : "sheet.cast"))));

        heading("drawings");
        items.add(new PageItem.CheckBar());
        SheetDrawings drawings = new SheetDrawings(ring, findings, wishes.paper());
        items.add(drawings.views());
        items.addAll(drawings.sections());
        items.addAll(drawings.layouts());

        heading("weights");
        grid(RingTables.weights(ring));
        if (!wishes.metals().isEmpty()) {
            heading("other-metals");
            grid(otherMetals());
        }
        heading("casting");
        grid(story.casting());
        if (!ring.design().stoneRows().isEmpty()) {
            heading("stones");
            grid(stones());
        }
        heading("steps");
        List<String> cautions = Cautions.of(ring.design());
        grid(without(Steps.table(ring.design(), workshop, findings), cautions));
        heading("cautions");
        cautions.forEach(this::paragraph);
        heading("engraving");
        grid(Engraving.of(ring));
        heading("size");
        grid(story.sizes());
        heading("care");
        care();
        heading("checks");
        paragraph(findings.summary());
        grid(CheckTable.of(findings));
        if (!story.requirements().isEmpty()) {
            heading("requirements");
            story.requirements().forEach(this::paragraph);
        }
        heading("decisions");
        grid(story.decisions());
    }

    private void heading(String key) {
        items.add(new PageItem.Heading(Sentences.of("sheet." + key)));
    }

    private void paragraph(String text) {
        items.add(new PageItem.Paragraph(text));
    }

    private void grid(Table table) {
        items.add(new PageItem.Grid(table));
    }

    /** The table without some of its footnotes, which have a place of their own. */
    private static Table without(Table table, List<String> notes) {
        List<String> rest =
                table.footnotes().stream().filter(note -> !notes.contains(note)).toList();
        return new Table(table.title(), table.columns(), table.rows(), rest);
    }

    private Table facts(String fingerprint) {
        Map<String, String> facts = new LinkedHashMap<>();
        for (Band band : ring.design().bands()) {
            var bore = band.finger().bore();
            facts.put(
                    "finger of " + band.name(),
                    bore.text() + ", " + QuantityFormat.number(bore.diameterMm(), 2) + " mm across, "
                            + QuantityFormat.number(bore.circumferenceMm(), 2) + " mm round");
            PartMeasures measures = new PartMeasures(ring, band.name());
            facts.put(
                    band.name(),
                    band.metal().name() + ", " + QuantityFormat.number(measures.widthMm(), 3) + " mm wide, "
                            + QuantityFormat.number(measures.heightMm(), 3) + " mm thick");
        }
        double weight = ring.bodies().stream()
                .mapToDouble(body -> new PartMeasures(ring, body.name()).weightG())
                .sum();
        facts.put("metal, finished", Quantity.grams(weight).toString());
        for (StoneRow row : ring.design().stoneRows()) {
            RowMeasures measures = new RowMeasures(ring, row.name());
            facts.put(
                    row.name(),
                    measures.count() + " " + row.cut().word() + " "
                            + row.material().name() + ", " + QuantityFormat.number(measures.caratsTotal(), 3)
                            + " ct in all");
        }
        facts.put("checks", findings.summary());
        facts.put("fingerprint", fingerprint);
        List<List<String>> rows = new ArrayList<>();
        facts.forEach((name, value) -> rows.add(List.of(name, value)));
        return new Table("", List.of(Table.Column.words("ring"), Table.Column.words("")), rows, List.of());
    }

    /** A row a metal: a ring has few parts, and a customer asks for many metals. */
    private Table otherMetals() {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.words("metal"));
        columns.add(Table.Column.numbers("density", "g/cm^3"));
        ring.bodies().forEach(body -> columns.add(Table.Column.numbers(body.name(), "g")));
        columns.add(Table.Column.numbers("ring", "g"));
        List<List<String>> rows = new ArrayList<>();
        Set<String> sources = new LinkedHashSet<>();
        for (Metal metal : wishes.metals()) {
            List<String> row = new ArrayList<>(List.of(metal.name(), number(metal.densityGPerCm3())));
            double whole = 0;
            for (Body body : ring.bodies()) {
                row.add(number(body.volumeMm3() * metal.densityGPerCm3() / 1000));
                whole += body.volumeMm3();
            }
            row.add(number(whole * metal.densityGPerCm3() / 1000));
            rows.add(row);
            sources.add(metal.name() + ": density: "
                    + metal.sources().stream().map(MaterialSource::text).collect(Collectors.joining(" | ")));
        }
        return new Table("Were it all of one metal", columns, rows, List.copyOf(sources));
    }

    private static String number(double value) {
        return QuantityFormat.number(value, 3);
    }

    /** The order list, with what is bought beyond the stones that are set. */
    private Table stones() {
        Table order = RingTables.stones(ring);
        List<Table.Column> columns = new ArrayList<>(order.columns());
        columns.add(Table.Column.numbers("to order", ""));
        List<List<String>> rows = new ArrayList<>();
        int all = 0;
        List<StoneRow> stoneRows = ring.design().stoneRows();
        for (int i = 0; i < order.rows().size(); i++) {
            List<String> row = new ArrayList<>(order.rows().get(i));
            if (i < stoneRows.size()) {
                int count = new RowMeasures(ring, stoneRows.get(i).name()).count();
                int bought = count + Spares.of(wishes.spares(), count);
                all += bought;
                row.add(Integer.toString(bought));
            } else {
                row.add(Integer.toString(all));
            }
            rows.add(row);
        }
        List<String> notes = new ArrayList<>(List.of(Sentences.of("sheet.spares", spares())));
        notes.addAll(order.footnotes());
        return new Table(order.title(), columns, rows, notes);
    }

    private String spares() {
        return wishes.spares().value() < 1
                ? QuantityFormat.number(100 * wishes.spares().value(), 1) + " %"
                : wishes.spares().toString();
    }

    private void care() {
        paragraph(Sentences.of("care.wear"));
        List<String> hard = ring.design().parts().stream()
                .map(ring.design()::metal)
                .filter(metal -> Working.of(metal).isTurned())
                .map(Metal::name)
                .distinct()
                .toList();
        if (!hard.isEmpty()) {
            paragraph(Sentences.of("care.turned", String.join(" and ", hard)));
        }
        if (!ring.design().stoneRows().isEmpty()) {
            paragraph(Sentences.of("care.stones"));
            boolean tough = ring.design().stoneRows().stream()
                    .allMatch(row -> row.material().name().equals("diamond"));
            if (!tough) {
                paragraph(Sentences.of("care.soft-stones"));
            }
        }
    }
}

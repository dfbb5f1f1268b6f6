// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.Answer;
import bandwright.dsl.Report;
import bandwright.dsl.view.Table;
import bandwright.kernel.display.Decimals;

/** The numbers as one table in long form: a row for each figure, which any spreadsheet can sort and sum. */
final class MeasureCsv {
    private static final int PLACES = 6;

    private final List<List<String>> rows = new ArrayList<>();

    private MeasureCsv() {}

    static String write(Report report) {
        MeasureCsv csv = new MeasureCsv();
        csv.fill(report);
        List<Table.Column> columns = List.of(
                Table.Column.words("kind"),
                Table.Column.words("name"),
                Table.Column.words("figure"),
                Table.Column.words("value"),
                Table.Column.words("unit"));
        return new Table("", columns, csv.rows, List.of()).csv();
    }

    private void fill(Report report) {
        String title = report.title();
        if (title != null) {
            add("ring", title, "title", title, "");
        }
        Report.FingerLine finger = report.finger();
        if (finger != null) {
            add("finger", finger.size(), "inner diameter", finger.innerDiameterMm(), "mm");
            add("finger", finger.size(), "inner circumference", finger.innerCircumferenceMm(), "mm");
        }
        report.parts().forEach(this::part);
        add("ring", "all parts", "weight", report.totalWeightG(), "g");
        report.stoneRows().forEach(this::row);
        report.requirements().forEach(this::require);
        add("ring", "design", "fingerprint", report.fingerprint(), "");
    }

    private void part(Report.PartLine part) {
        add("part", part.name(), "metal", part.metal(), "");
        add("part", part.name(), "volume", part.volumeMm3(), "mm^3");
        add("part", part.name(), "density", part.densityGPerCm3(), "g/cm^3");
        add("part", part.name(), "density source", part.densitySource(), "");
        add("part", part.name(), "weight", part.weightG(), "g");
        add("part", part.name(), "closed", Boolean.toString(part.closed()), "");
        add("part", part.name(), "triangles", Integer.toString(part.triangles()), "");
    }

    private void row(Report.RowLine row) {
        add("stone-row", row.name(), "part", row.part(), "");
        add("stone-row", row.name(), "stone", row.stone(), "");
        add("stone-row", row.name(), "count", Integer.toString(row.count()), "");
        add("stone-row", row.name(), "diameter", row.diameterMm(), "mm");
        add("stone-row", row.name(), "gap", row.gapMm(), "mm");
        add("stone-row", row.name(), "pitch", row.pitchMm(), "mm");
        add("stone-row", row.name(), "carats each", row.caratsEach(), "ct");
        add("stone-row", row.name(), "carats total", row.caratsTotal(), "ct");
    }

    private void require(Answer.Requirement requirement) {
        Answer.Margin margin = requirement.margin();
        String text = requirement.text();
        add("require", text, "passed", Boolean.toString(requirement.passed()), "");
        add("require", text, "measured", orEmpty(requirement.measured()), "");
        add("require", text, "margin", Margins.value(requirement), margin == null ? "" : margin.unit());
        add("require", text, "margin share", Margins.percent(requirement), "%");
        add("require", text, "because", orEmpty(requirement.because()), "");
        add("require", text, "trouble", orEmpty(requirement.trouble()), "");
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** A figure that there is not, such as the gap of a single stone, is an empty cell. */
    private void add(String kind, String name, String figure, @Nullable Double value, String unit) {
        add(kind, name, figure, value == null ? "" : Decimals.plain(value, PLACES), unit);
    }

    private void add(String kind, String name, String figure, String value, String unit) {
        rows.add(List.of(kind, name, figure, value, unit));
    }
}

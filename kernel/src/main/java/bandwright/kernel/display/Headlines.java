// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.display;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import bandwright.dsl.Answer;
import bandwright.dsl.Report;
import bandwright.dsl.view.Table;

/** The headline numbers of a design as tables, for a console, a page or a spreadsheet. */
public final class Headlines {
    private Headlines() {}

    /** The finger as a line of words: {@code ISO 57, 18.144 mm across, 57 mm round}. */
    public static Optional<String> finger(Report report) {
        Report.FingerLine finger = report.finger();
        return finger == null
                ? Optional.empty()
                : Optional.of(finger.size() + ", " + Decimals.plain(finger.innerDiameterMm(), 3) + " mm across, "
                        + Decimals.plain(finger.innerCircumferenceMm(), 3) + " mm round");
    }

    /** Metal, volume and weight of each part, and of all; below, where the densities come from. */
    public static Table parts(Report report) {
        List<List<String>> rows = new ArrayList<>();
        Set<String> sources = new LinkedHashSet<>();
        double volume = 0;
        for (Report.PartLine part : report.parts()) {
            rows.add(List.of(
                    part.name(),
                    part.metal(),
                    Decimals.fixed(part.volumeMm3(), 3),
                    Decimals.fixed(part.densityGPerCm3(), 2),
                    Decimals.fixed(part.weightG(), 3)));
            sources.add("Density of " + part.metal() + ": " + part.densitySource());
            if (!part.closed()) {
                sources.add("The body of " + part.name() + " is not closed: its volume is not to be trusted.");
            }
            volume += part.volumeMm3();
        }
        if (rows.size() > 1) {
            rows.add(List.of("all parts", "", Decimals.fixed(volume, 3), "", Decimals.fixed(report.totalWeightG(), 3)));
        }
        return new Table(
                "Metal",
                List.of(
                        Table.Column.words("part"),
                        Table.Column.words("metal"),
                        Table.Column.numbers("volume", "mm^3"),
                        Table.Column.numbers("density", "g/cm^3"),
                        Table.Column.numbers("weight", "g")),
                rows,
                List.copyOf(sources));
    }

    /** Count, carats and smallest gap of each stone row. */
    public static Table stones(Report report) {
        List<List<String>> rows =
                report.stoneRows().stream().map(Headlines::row).toList();
        return new Table(
                "Stones",
                List.of(
                        Table.Column.words("row"),
                        Table.Column.words("on"),
                        Table.Column.words("stone"),
                        Table.Column.numbers("count", ""),
                        Table.Column.numbers("together", "ct"),
                        Table.Column.numbers("smallest gap", "mm")),
                rows,
                List.of());
    }

    private static List<String> row(Report.RowLine row) {
        Double gap = row.gapMm();
        return List.of(
                row.name(),
                row.part(),
                row.stone(),
                Integer.toString(row.count()),
                Decimals.fixed(row.caratsTotal(), 3),
                gap == null ? "none" : Decimals.fixed(gap, 3));
    }

    /** Each requirement, how it came out, and by how much. */
    public static Table requirements(Report report) {
        return new Table(
                "Requirements",
                List.of(
                        Table.Column.words("condition"),
                        Table.Column.words("result"),
                        Table.Column.numbers("margin", ""),
                        Table.Column.words("because")),
                report.requirements().stream().map(Headlines::row).toList(),
                List.of());
    }

    private static List<String> row(Answer.Requirement requirement) {
        Answer.Margin margin = requirement.margin();
        String because = requirement.because();
        String trouble = requirement.trouble();
        return List.of(
                requirement.text(),
                requirement.passed() ? "passed" : requirement.result().toUpperCase(Locale.ROOT),
                margin == null ? "" : margin.text(),
                trouble == null ? (because == null ? "" : because) : trouble);
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.check.Finding;
import bandwright.dsl.check.Findings;
import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.diagnostic.Severity;
import bandwright.dsl.material.Metal;
import bandwright.dsl.measure.PartMeasures;
import bandwright.dsl.measure.RowMeasures;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Finger;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.Resolution;

/** Draws up the numbers of a design. What cannot be measured becomes a trouble; the rest is still told. */
final class Reporter {
    private final Resolution design;
    private final RefusedCells refused;
    private final Supplier<Ring> ring;
    private final Supplier<Findings> findings;
    private final List<Diagnostic> troubles = new ArrayList<>();

    Reporter(Resolution design, RefusedCells refused, Supplier<Ring> ring, Supplier<Findings> findings) {
        this.refused = refused;
        this.findings = findings;
        this.design = design;
        this.ring = ring;
    }

    Report report() {
        List<Report.PartLine> parts = new ArrayList<>();
        List<Report.RowLine> rows = new ArrayList<>();
        List<Report.FingerLine> fingers = new ArrayList<>();
        attempt(() -> design.bands().forEach(band -> fingers.add(finger(band))));
        if (!fingers.isEmpty()) {
            attempt(() -> ring.get().bodies().forEach(body -> parts.add(part(body))));
        }
        attempt(() -> design.stoneRows().forEach(row -> rows.add(row(row))));
        List<Finding> checks = new ArrayList<>();
        if (troubles.isEmpty()) {
            attempt(() -> checks.addAll(findings.get().all()));
        }
        // What nobody has defined by now will not come: say what the ring is still waiting for.
        design.problems().stream()
                .filter(told -> told.severity() != Severity.NOTE && !troubles.contains(told))
                .forEach(troubles::add);
        List<Answer.Requirement> requirements = design.definitions().requirements().stream()
                .map(entry -> Requirements.judge(design, entry))
                .toList();
        return new Report(
                design.title().orElse(null),
                fingers.isEmpty() ? null : fingers.get(0),
                parts,
                rows,
                requirements,
                checks,
                refused.explained(troubles),
                parts.isEmpty() ? "" : design.fingerprint());
    }

    private void attempt(Runnable work) {
        try {
            work.run();
        } catch (Fault fault) {
            troubles.addAll(fault.diagnostics());
        }
    }

    private static Report.FingerLine finger(Band band) {
        Finger finger = band.finger();
        boolean larger =
                Math.abs(finger.bore().circumferenceMm() - finger.size().circumferenceMm()) > 1e-9;
        return new Report.FingerLine(
                finger.size().text() + (larger ? " with its allowance" : ""),
                finger.bore().diameterMm(),
                finger.bore().circumferenceMm());
    }

    private Report.PartLine part(Body body) {
        PartMeasures measures = new PartMeasures(ring.get(), body.name());
        int pieces = body.pieces();
        int meant = ring.get().pieces(body.name());
        if (pieces != meant) {
            troubles.add(Diagnostic.error("loose-pieces", body.section().band().place())
                    .with(body.name(), Integer.toString(pieces))
                    .build());
        }
        Metal metal = body.section().metal();
        return new Report.PartLine(
                body.name(),
                metal.name(),
                measures.volumeMm3(),
                measures.densityGPerCm3(),
                source(metal),
                measures.weightG(),
                body.isClosed(),
                body.mesh().triangleCount());
    }

    /** Where the density was read; further readings of it stand in {@code show weights}. */
    private static String source(Metal metal) {
        return metal.sources().get(0).text();
    }

    private static String stone(StoneRow row) {
        String length = QuantityFormat.format(Quantity.millimetres(row.aroundMm()));
        String width = QuantityFormat.format(Quantity.millimetres(row.widthMm()));
        return row.cut().word() + " " + row.material().name() + " "
                + (row.cut().hasTwoSizes() ? length + " by " + width : length);
    }

    private static @Nullable Double value(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private Report.RowLine row(StoneRow row) {
        RowMeasures measures = new RowMeasures(ring.get(), row.name());
        return new Report.RowLine(
                row.name(),
                row.part(),
                stone(row),
                measures.count(),
                row.aroundMm(),
                value(measures.gapMm()),
                value(measures.pitchMm()),
                measures.caratsEach(),
                measures.caratsTotal());
    }
}

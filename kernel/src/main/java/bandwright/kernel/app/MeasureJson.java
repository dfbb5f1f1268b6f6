// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import org.jspecify.annotations.Nullable;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

import bandwright.dsl.Answer;
import bandwright.dsl.Report;
import bandwright.dsl.check.Finding;
import bandwright.dsl.check.RingPlace;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.kernel.display.Decimals;
import bandwright.kernel.notebook.JsonText;

/**
 * The numbers as JSON, units in the key names. Numbers are plain decimals of at most six places; one that could not be
 * worked out, or that there is not, is {@code null}.
 */
final class MeasureJson {
    private static final int PLACES = 6;

    private MeasureJson() {}

    static String write(Report report) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("title", report.title());
        var parts = root.putArray("parts");
        report.parts().forEach(part -> part(parts.addObject(), part));
        number(root, "total_weight_g", report.totalWeightG());
        var rows = root.putArray("stone_rows");
        report.stoneRows().forEach(row -> row(rows.addObject(), row));
        var requires = root.putArray("requires");
        report.requirements().forEach(requirement -> require(requires.addObject(), requirement));
        var checks = root.putArray("checks");
        report.checks().forEach(finding -> check(checks.addObject(), finding));
        Report.FingerLine finger = report.finger();
        if (finger == null) {
            root.putNull("finger");
        } else {
            finger(root.putObject("finger"), finger);
        }
        root.put("fingerprint", report.fingerprint());
        return JsonText.inOrder(root);
    }

    private static void part(ObjectNode node, Report.PartLine part) {
        node.put("name", part.name()).put("metal", part.metal());
        number(node, "volume_mm3", part.volumeMm3());
        number(node, "density_g_cm3", part.densityGPerCm3());
        node.put("density_source", part.densitySource());
        number(node, "weight_g", part.weightG());
        node.put("closed", part.closed()).put("triangles", part.triangles());
    }

    private static void row(ObjectNode node, Report.RowLine row) {
        node.put("name", row.name())
                .put("part", row.part())
                .put("stone", row.stone())
                .put("count", row.count());
        number(node, "diameter_mm", row.diameterMm());
        number(node, "gap_mm", row.gapMm());
        number(node, "pitch_mm", row.pitchMm());
        number(node, "carats_each", row.caratsEach());
        number(node, "carats_total", row.caratsTotal());
    }

    private static void require(ObjectNode node, Answer.Requirement requirement) {
        Answer.Margin margin = requirement.margin();
        node.put("text", requirement.text())
                .put("passed", requirement.passed())
                .put("measured", requirement.measured());
        number(node, "margin", Margins.value(requirement));
        node.put("margin_unit", margin == null ? null : margin.unit());
        number(node, "margin_percent", Margins.percent(requirement));
        node.put("because", requirement.because()).put("trouble", requirement.trouble());
    }

    /** Values in the unit beside them; a place is in degrees and mm. */
    private static void check(ObjectNode node, Finding finding) {
        Quantity measured = finding.measured();
        Quantity margin = finding.margin();
        RingPlace place = finding.place();
        node.put("check", finding.check()).put("verdict", finding.verdict().word());
        var subjects = node.putArray("subjects");
        finding.subjects().forEach(subjects::add);
        number(node, "measured", measured == null ? null : measured.count(unit(measured)));
        number(node, "margin", margin == null ? null : margin.count(unit(margin)));
        node.put("unit", measured == null ? null : unit(measured).symbol())
                .put("limit", finding.limit())
                .put("source", finding.source());
        if (place == null) {
            node.putNull("place");
        } else {
            ObjectNode at = node.putObject("place");
            number(at, "around_deg", place.aroundDegrees());
            number(at, "across_mm", place.acrossMm());
            number(at, "out_mm", place.outMm());
        }
        node.put("says", finding.sentence());
    }

    private static Unit unit(Quantity quantity) {
        Unit shown = quantity.shown();
        return shown == null ? Unit.shownFor(quantity.dimension()) : shown;
    }

    private static void finger(ObjectNode node, Report.FingerLine finger) {
        node.put("size", finger.size());
        number(node, "inner_diameter_mm", finger.innerDiameterMm());
        number(node, "inner_circumference_mm", finger.innerCircumferenceMm());
    }

    private static void number(ObjectNode node, String key, @Nullable Double value) {
        if (value == null) {
            node.putNull(key);
            return;
        }
        Decimals.trimmed(value, PLACES).ifPresentOrElse(decimal -> node.put(key, decimal), () -> node.putNull(key));
    }
}

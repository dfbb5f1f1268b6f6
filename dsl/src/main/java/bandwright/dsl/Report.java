// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.check.Finding;
import bandwright.dsl.diagnostic.Diagnostic;

/**
 * The numbers of a design, units in the names.
 *
 * @param checks what the checks found, failures first; none where something could not be measured
 * @param troubles what could not be measured, and why
 * @param fingerprint sixteen hexadecimal digits that change when the ring changes; empty text where there is no ring
 */
public record Report(
        @Nullable String title,
        @Nullable FingerLine finger,
        List<PartLine> parts,
        List<RowLine> stoneRows,
        List<Answer.Requirement> requirements,
        List<Finding> checks,
        List<Diagnostic> troubles,
        String fingerprint) {
    public Report {
        parts = List.copyOf(parts);
        stoneRows = List.copyOf(stoneRows);
        requirements = List.copyOf(requirements);
        checks = List.copyOf(checks);
        troubles = List.copyOf(troubles);
    }

    public record FingerLine(String size, double innerDiameterMm, double innerCircumferenceMm) {}

    /** @param triangles of the part's closed mesh */
    public record PartLine(
            String name,
            String metal,
            double volumeMm3,
            double densityGPerCm3,
            String densitySource,
            double weightG,
            boolean closed,
            int triangles) {}

    /** @param gapMm smallest gap between girdles, and {@code pitchMm} from centre to centre; none for a single stone */
    public record RowLine(
            String name,
            String part,
            String stone,
            int count,
            double diameterMm,
            @Nullable Double gapMm,
            @Nullable Double pitchMm,
            double caratsEach,
            double caratsTotal) {}

    public double totalWeightG() {
        return parts.stream().mapToDouble(PartLine::weightG).sum();
    }

    public boolean allPassed() {
        return requirements.stream().allMatch(Answer.Requirement::passed);
    }
}

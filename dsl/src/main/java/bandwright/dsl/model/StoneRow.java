// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.List;
import java.util.OptionalDouble;

import bandwright.dsl.material.StoneAngles;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.material.StoneSize;
import bandwright.dsl.source.Place;

/**
 * Stones in a row round the ring.
 *
 * @param part the part they are set in
 * @param size which way it lies is told by {@code longAcross}
 * @param longAcross whether the longer of its sizes lies across the band, not along the row
 * @param toleranceMm how far stones of the parcel may differ from the size; 0 if nothing is said
 * @param spacing how their number is found
 * @param sinkMm how far the girdle line, its lower edge, lies below the surface
 * @param acrossMm offsets of the row's lines; several for parallel rows
 * @param girdleShare thickness of the girdle as a share of the size
 * @param depthShare from table to culet as a share of the width, if measured; else that of the cut
 */
public record StoneRow(
        String name,
        Place place,
        String part,
        StoneCut cut,
        StoneMaterial material,
        StoneSize size,
        boolean longAcross,
        double toleranceMm,
        Arc around,
        Spacing spacing,
        double sinkMm,
        List<Double> acrossMm,
        boolean staggered,
        boolean upright,
        double girdleShare,
        OptionalDouble depthShare) {
    public StoneRow {
        acrossMm = List.copyOf(acrossMm);
    }

    /** Size of a stone along the row, mm. */
    public double aroundMm() {
        return longAcross ? size.widthMm() : size.lengthMm();
    }

    /** Size of a stone across the band, mm. */
    public double widthMm() {
        return longAcross ? size.lengthMm() : size.widthMm();
    }

    /** From table to culet, mm: as measured, or the cut's usual depth. */
    public double depthMm() {
        return depthShare.orElse(cut.depthShare()) * size.widthMm();
    }

    /** Whether nobody has measured how deep they are, and they are mostly deeper than is reckoned with. */
    public boolean depthIsGuessed() {
        return depthShare.isEmpty() && !material.isCutAsDiamond();
    }

    /** How the stones slope: what they are deeper than their cut's usual depth, they are deeper below the girdle. */
    public StoneAngles angles() {
        StoneAngles usual = StoneAngles.of(cut);
        return depthShare.isPresent() ? usual.deeper(depthShare.getAsDouble() - cut.depthShare()) : usual;
    }

    /** How many stones there are. */
    public sealed interface Spacing {}

    public record Count(int stones) implements Spacing {}

    /** As many as fit with at least this gap, evenly spread. */
    public record AtLeast(double gapMm) implements Spacing {}

    /** Exactly this gap; on an arc the rest is left at its ends. */
    public record Exactly(double gapMm) implements Spacing {}
}

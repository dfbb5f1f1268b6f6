// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import bandwright.dsl.material.Metal;
import bandwright.dsl.source.Place;

/**
 * A groove cut out of one or several parts.
 *
 * @param from names of the parts it is cut from
 * @param acrossMm offset of its middle, positive to the fingertip
 * @param widthMm between its walls; the width of the floor's profile where there is one
 * @param floor the profile whose lower outline is the floor; a square floor if absent
 * @param depthMm from the outer surface (the inner wall if {@code inside}) at the groove's middle to its floor; absent if the
 *     groove goes through to the finger
 * @param leaving names for the pieces, from the hand to the fingertip; empty if it leaves one
 */
public record Groove(
        String name,
        Place place,
        List<String> from,
        double acrossMm,
        double widthMm,
        Optional<Section> floor,
        OptionalDouble depthMm,
        Arc around,
        boolean roundEnds,
        boolean inside,
        boolean atBench,
        Optional<Keep> keep,
        Optional<LetIn> letIn,
        Optional<String> joint,
        List<String> leaving) {
    public Groove {
        from = List.copyOf(from);
        leaving = List.copyOf(leaving);
    }

    /**
     * What becomes of the metal cut away.
     *
     * @param part the name of the part it becomes
     * @param fitMm clearance left between the two, and between a collar that closes the way in and its seat
     */
    public record Keep(String part, Metal metal, double fitMm) {}

    /** The clearance of what it keeps, mm; 0 where it keeps nothing. */
    public double fitMm() {
        return keep.map(Keep::fitMm).orElse(0.0);
    }

    /** The part that closes the way in of a ring that slides in from a side. */
    public Optional<String> collar() {
        return letIn.filter(LetInFrom.class::isInstance)
                .map(LetInFrom.class::cast)
                .map(LetInFrom::collar);
    }

    /** Whether what it keeps is poured into its place. */
    public boolean isPoured() {
        return letIn.filter(LetInCast.class::isInstance).isPresent();
    }

    /** How a kept ring gets into its place. */
    public sealed interface LetIn {}

    /** From one side: the flank there, down to the level of the floor, becomes a part of its own. */
    public record LetInFrom(boolean fingertip, String collar) implements LetIn {}

    /** As two halves with their seams at an angle. */
    public record LetInHalves(double degrees) implements LetIn {}

    /** Poured in. */
    public record LetInCast() implements LetIn {}
}

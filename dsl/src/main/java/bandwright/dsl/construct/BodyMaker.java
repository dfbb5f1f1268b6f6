// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.function.ToIntFunction;

import bandwright.dsl.geometry.operation.Revolution;
import bandwright.dsl.geometry.operation.SolidBoolean;
import bandwright.dsl.geometry.operation.Wedge;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

/**
 * Makes a part's body from its cross-section and the features cut from it and added to it.
 *
 * <ol>
 *   <li>No features: a body of revolution, exact.
 *   <li>Features that repeat n times round the ring, each a mirror image of itself: half a pitch tells all. A sector a little
 *       larger is swept, cut and added to, clipped by the two planes of symmetry, and copied; see {@link Wedge}.
 *   <li>Otherwise the whole ring is swept and every feature is cut and added.
 *   <li>A part that is not turned has been carved already ({@link Carved}); every feature is cut from it and added to it.
 * </ol>
 */
final class BodyMaker {
    /** How far chords leave the arcs of a cross-section, mm. */
    static final double CHORD_RISE_MM = 5e-4;

    /** Facets round the ring, at least. */
    static final int FACETS = 320;

    /** Of a body of revolution any number of facets repeats; these are as many as one would draw at once. */
    private static final int FACETS_A_REPEAT = 8;

    private final Workshop.Recipe recipe;
    private final Revolution revolution;
    private final int endFace;

    BodyMaker(Workshop.Recipe recipe, ToIntFunction<Curve> surfaceOf, int endFace) {
        this.recipe = recipe;
        this.revolution = new Revolution(recipe.section(), CHORD_RISE_MM, surfaceOf);
        this.endFace = endFace;
    }

    Body.Shape make() {
        double exact = recipe.section().moments().volumeAboutX();
        if (recipe.cuts().isEmpty() && recipe.additions().isEmpty()) {
            // One facet of a body of revolution tells all of it.
            return new Body.Shape(
                    exact,
                    revolution.facet(FACETS),
                    () -> revolution.ring(FACETS),
                    FACETS / FACETS_A_REPEAT,
                    StrictMath.PI / FACETS);
        }
        double flattened = revolution.volume(2 * StrictMath.PI);
        if (recipe.folds() > 0) {
            Wedge wedge = wedge();
            if (wedge.isSound()) {
                return new Body.Shape(
                        exact + wedge.wholeVolume() - flattened, wedge.open(), wedge::whole, recipe.folds(), 0);
            }
        }
        // No symmetry, or something that only touches a plane of it: the long way.
        Mesh whole = shape(revolution.ring(FACETS), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        return closed(exact + MeshMeasures.volume(whole) - flattened, whole);
    }

    /** A part that is not turned. */
    Body.Shape carve(Carved base) {
        if (recipe.cuts().isEmpty() && recipe.additions().isEmpty()) {
            return closed(base.volumeMm3(), base.mesh());
        }
        Mesh whole = shape(base.mesh(), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        return closed(base.volumeMm3() + MeshMeasures.volume(whole) - MeshMeasures.volume(base.mesh()), whole);
    }

    private static Body.Shape closed(double volume, Mesh whole) {
        String fault = MeshMeasures.closednessFault(whole);
        if (!fault.isEmpty()) {
            throw new IllegalStateException("A body does not close: " + fault);
        }
        return new Body.Shape(volume, Mesh.EMPTY, () -> whole);
    }

    private Wedge wedge() {
        int folds = recipe.folds();
        double angle = StrictMath.PI / folds;
        int perWedge = Math.max(2, (FACETS + 2 * folds - 1) / (2 * folds));
        double step = angle / perWedge;
        Mesh base = folds == 1 ? revolution.ring(2 * perWedge) : revolution.sector(step, -1, perWedge, endFace);
        return Wedge.of(shape(base, -step, angle + step), folds);
    }

    /** Cuts and adds the features whose angle, with what they take round the ring, meets the given span. */
    private Mesh shape(Mesh base, double from, double to) {
        Mesh body = base;
        for (Mesh tool : operands(recipe.cuts(), from, to)) {
            body = SolidBoolean.difference(body, tool);
        }
        for (Mesh pin : operands(recipe.additions(), from, to)) {
            body = SolidBoolean.union(body, pin);
        }
        return body;
    }

    private static List<Mesh> operands(List<Feature> features, double from, double to) {
        return Operands.of(features.stream()
                .map(feature -> feature.at(feature.axes().stream()
                        .filter(axis -> meets(axis.angle(), feature.halfAngle(), from, to))
                        .toList()))
                .toList());
    }

    private static boolean meets(double angle, double half, double from, double to) {
        double turn = 2 * StrictMath.PI;
        return from == Double.NEGATIVE_INFINITY
                || (angle + half > from && angle - half < to)
                || (angle - turn + half > from && angle - turn - half < to);
    }
}

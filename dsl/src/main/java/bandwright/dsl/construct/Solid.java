// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.geometry.operation.Loft;
import bandwright.dsl.geometry.operation.SolidBoolean;
import bandwright.dsl.geometry.plane.Curve;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.solid.Mesh;

/**
 * How a body comes about that is not (only) turned: from a swept section by tools. A value: the same recipe is the same body. {@link
 * Workshop#carved} makes it.
 */
sealed interface Solid {
    /** A cross-section turned all the way; a surface number for each of its curves, in their order. */
    record Turned(Region region, List<Integer> faces) implements Solid {
        public Turned {
            faces = List.copyOf(faces);
        }

        /** The number of the surface that a curve sweeps. */
        int face(Curve curve) {
            int at = 0;
            for (Region.Piece piece : region.pieces()) {
                for (Outline outline : piece.outlines()) {
                    for (Curve own : outline.curves()) {
                        if (own.equals(curve)) {
                            return faces.get(at);
                        }
                        at++;
                    }
                }
            }
            throw new IllegalArgumentException("A curve of another section");
        }
    }

    /** @param rest what the band holds beyond its facets, mm³ */
    record Lofted(Loft loft, double rest) implements Solid {}

    /** What a tool leaves. */
    record Less(Solid body, Tool tool) implements Solid {}

    /** What a tool takes. */
    record Taken(Solid body, Tool tool) implements Solid {}

    /** Bodies that touch, as one. */
    record Joined(List<Solid> bodies) implements Solid {
        public Joined {
            bodies = List.copyOf(bodies);
        }
    }

    /** One of the bodies into which a body falls, counted from the hand. */
    record Piece(Solid body, int number) implements Solid {}

    /**
     * What cuts.
     *
     * @param within if present, only what lies within this too
     */
    record Tool(Loft loft, Optional<Loft> within) {
        Mesh mesh() {
            return within.map(other -> SolidBoolean.intersection(loft.mesh(), other.mesh()))
                    .orElseGet(loft::mesh);
        }

        /** The tool's floor and top at a place, if it reaches there. */
        Optional<Reach> at(double radians, double across) {
            return Reach.of(loft, radians, across)
                    .filter(reach -> within.isEmpty()
                            || Reach.of(within.get(), radians, across).isPresent());
        }
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

import bandwright.dsl.geometry.operation.Revolution;
import bandwright.dsl.geometry.operation.SolidBoolean;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.geometry.solid.MeshShells;

/**
 * A {@link Solid} made.
 *
 * <p>Its volume is that of its facets, set right by the factor that is known for the whole body it was cut from. What a tool takes
 * and what it leaves is cut with the same mesh: the two volumes are the whole to rounding.
 *
 * @param shells its separate bodies, from the hand to the fingertip
 */
record Carved(Mesh mesh, double volumeMm3, List<Mesh> shells) {
    /** Bodies smaller than this, mm³, are left by rounding, not by the design. */
    static final double SPECK_MM3 = 1e-6;

    static Carved make(Solid solid, Function<Solid, Carved> others) {
        if (solid instanceof Solid.Turned turned) {
            Mesh mesh = new Revolution(turned.region(), BodyMaker.CHORD_RISE_MM, turned::face).ring(BodyMaker.FACETS);
            return of(mesh, turned.region().moments().volumeAboutX());
        } else if (solid instanceof Solid.Lofted lofted) {
            Mesh mesh = lofted.loft().mesh();
            return of(mesh, MeshMeasures.volume(mesh) + lofted.rest());
        } else if (solid instanceof Solid.Less less) {
            Carved body = others.apply(less.body());
            Mesh mesh = SolidBoolean.difference(body.mesh, less.tool().mesh());
            return of(mesh, body.share(mesh));
        } else if (solid instanceof Solid.Taken taken) {
            Carved body = others.apply(taken.body());
            Mesh mesh = SolidBoolean.intersection(body.mesh, taken.tool().mesh());
            return of(mesh, body.share(mesh));
        } else if (solid instanceof Solid.Joined joined) {
            Mesh mesh = Mesh.EMPTY;
            double volume = 0;
            for (Solid body : joined.bodies()) {
                Carved one = others.apply(body);
                mesh = SolidBoolean.union(mesh, one.mesh);
                volume += one.volumeMm3;
            }
            return of(mesh, volume);
        }
        Solid.Piece piece = (Solid.Piece) solid;
        Carved body = others.apply(piece.body());
        Mesh mesh = body.shells.get(piece.number());
        return of(mesh, body.share(mesh));
    }

    /** What a part of this body holds: its facets' volume, set right as this body's is. */
    private double share(Mesh part) {
        return part.isEmpty() ? 0 : MeshMeasures.volume(part) * (volumeMm3 / MeshMeasures.volume(mesh));
    }

    private static Carved of(Mesh mesh, double volumeMm3) {
        List<Mesh> shells = new ArrayList<>(MeshShells.of(mesh).stream()
                .filter(shell -> MeshMeasures.volume(shell) > SPECK_MM3)
                .toList());
        if (shells.size() > 1) {
            shells.sort(Comparator.comparingDouble(Carved::middle));
        }
        return new Carved(mesh, volumeMm3, shells);
    }

    private static double middle(Mesh mesh) {
        Bounds box = bounds(mesh);
        return (box.minX() + box.maxX()) / 2;
    }

    /** Where the body lies across (x) and away from the axis (y), mm. */
    Bounds bounds() {
        return bounds(mesh);
    }

    static Bounds bounds(Mesh mesh) {
        Bounds bounds = Bounds.NONE;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            double out = Math.sqrt(mesh.x(v) * mesh.x(v) + mesh.y(v) * mesh.y(v));
            bounds = new Bounds(
                    Math.min(bounds.minX(), mesh.z(v)),
                    Math.min(bounds.minY(), out),
                    Math.max(bounds.maxX(), mesh.z(v)),
                    Math.max(bounds.maxY(), out));
        }
        return bounds;
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.geometry.operation.ThinnestWall;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

/** A part as a body. Its volume is known at once; the closed mesh and the thinnest wall are made when first asked for. */
public record Body(PartSection section, Shape shape) {
    public String name() {
        return section.name();
    }

    public double volumeMm3() {
        return shape.volumeMm3;
    }

    /** The whole body, closed. */
    public Mesh mesh() {
        return shape.mesh();
    }

    public Optional<ThinnestWall.Wall> wall() {
        return shape.wall();
    }

    /** How many triangles a search for walls starts from: all, or those that stand for all by symmetry. */
    public int trianglesToSearch() {
        return shape.sample.isEmpty() ? mesh().triangleCount() : shape.sample.triangleCount();
    }

    /** The thinnest wall between surfaces of which none is left out; a surface is told by its number, see {@link Surfaces}. */
    public Optional<ThinnestWall.Wall> wallWithout(Set<Integer> leftOut) {
        return shape.wallWithout(leftOut);
    }

    /** How often the mesh repeats on its way round: a turn by a share of the circle carries it onto itself. 1 where nothing repeats. */
    public int repeats() {
        return shape.repeats;
    }

    /** Where a repeat begins, radians; no triangle lies on both sides of it. */
    public double repeatsFrom() {
        return shape.repeatsFrom;
    }

    public boolean isClosed() {
        return shape.isClosed();
    }

    /** How many separate closed surfaces the body has: one, if it is sound and has no hollow. */
    public int pieces() {
        return shape.pieces();
    }

    /**
     * A body without name or metal.
     *
     * <p>Volume: what revolves is exact (Pappus on lines and arcs). What seats and pins change is the difference of two faceted
     * bodies whose facets keep the volume of the round ones, so only a second-order rest of the facets enters: below 4 in
     * 10⁵ of the part at the settings used here, measured on the reference ring.
     */
    static final class Shape {
        private final double volumeMm3;
        private final Mesh sample;
        private final Supplier<Mesh> maker;
        private final int repeats;
        private final double repeatsFrom;
        private @Nullable Shape whole;
        private @Nullable Mesh mesh;
        private ThinnestWall.@Nullable Wall wall;
        private boolean wallKnown;
        private final Map<Set<Integer>, Optional<ThinnestWall.Wall>> walls = new HashMap<>();
        private @Nullable Boolean closed;
        private int pieces;

        /**
         * @param sample triangles of which all of the body's are copies by symmetry; empty where there is no symmetry
         */
        Shape(double volumeMm3, Mesh sample, Supplier<Mesh> maker) {
            this(volumeMm3, sample, maker, 1, 0);
        }

        /**
         * @param repeats how often the mesh repeats on its way round
         * @param repeatsFrom where a repeat begins, radians
         */
        Shape(double volumeMm3, Mesh sample, Supplier<Mesh> maker, int repeats, double repeatsFrom) {
            this.volumeMm3 = volumeMm3;
            this.sample = sample;
            this.maker = maker;
            this.repeats = repeats;
            this.repeatsFrom = repeatsFrom;
        }

        /** The same body parted by seams, which take no metal: its wall is that of the whole. */
        Shape parted(UnaryOperator<Mesh> seams) {
            Shape parted = new Shape(volumeMm3, sample, () -> seams.apply(mesh()));
            parted.whole = this;
            return parted;
        }

        synchronized Mesh mesh() {
            if (mesh == null) {
                mesh = maker.get();
            }
            return mesh;
        }

        synchronized Optional<ThinnestWall.Wall> wall() {
            if (whole != null) {
                return whole.wall();
            }
            if (!wallKnown) {
                wall = ThinnestWall.of(sample.isEmpty() ? mesh() : sample, mesh())
                        .orElse(null);
                wallKnown = true;
            }
            return Optional.ofNullable(wall);
        }

        synchronized Optional<ThinnestWall.Wall> wallWithout(Set<Integer> leftOut) {
            if (whole != null) {
                return whole.wallWithout(leftOut);
            }
            return walls.computeIfAbsent(
                    Set.copyOf(leftOut),
                    left -> ThinnestWall.of(sample.isEmpty() ? mesh() : sample, mesh(), left::contains));
        }

        synchronized int pieces() {
            if (pieces == 0) {
                pieces = MeshMeasures.shells(mesh());
            }
            return pieces;
        }

        synchronized boolean isClosed() {
            if (closed == null) {
                closed = MeshMeasures.isClosed(mesh());
            }
            return closed;
        }
    }
}

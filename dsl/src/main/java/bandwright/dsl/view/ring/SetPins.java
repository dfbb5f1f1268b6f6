// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.ring;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.joml.Vector3d;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshBuilder;
import bandwright.dsl.material.BrilliantProportions;
import bandwright.dsl.model.DerivedDesign;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.StoneRow;

/**
 * Pins as a setter leaves them, for pictures alone: the shank up to the girdle, and on it a low bead that leans over its stones and hides
 * the notch. Measures and files know pins as cast. The bead's outline is ours by eye; common practice, no source.
 */
final class SetPins {
    /** Of the crown's height, where no {@code set-height} is given: the middle of what is published for finished tips. */
    private static final double USUAL_TIP = 0.75;

    /** Of the pin's radius: how far the bead spreads along the row, and across it. */
    private static final double ALONG = 1.22;

    private static final double ACROSS = 1.02;

    /** Of the pin's radius: how far the bead is pushed to the row's line, on which its stones stand. */
    private static final double LEAN = 0.2;

    /** Of the pin's radius: how far a bead stands above the surface that its stones are sunk below, where no {@code set-height} is given. */
    private static final double PROUD = 0.6;

    /** How far the bead bulges below its widest place, of its height above it. */
    private static final double BELOW = 0.8;

    private static final int FACETS = 20;
    private static final int STEPS = 6;
    private static final int SHANK = 1;
    private static final int BEAD = 2;

    private SetPins() {}

    /** Pins that stand on one of these parts and hold stones of one of them. */
    static List<Prongs> among(Design design, Set<String> parts) {
        Set<String> rows = design.stoneRows().stream()
                .filter(row -> parts.contains(row.part()))
                .map(StoneRow::name)
                .collect(Collectors.toSet());
        return design.prongs().stream()
                .filter(prongs -> parts.contains(prongs.part()) && rows.contains(prongs.row()))
                .toList();
    }

    /** The same ring less some pins. */
    static Ring without(Ring ring, List<Prongs> pins) {
        return pins.isEmpty() ? ring : ring.of(new WithoutPins(ring.design(), List.copyOf(pins)));
    }

    private record WithoutPins(Design whole, List<Prongs> pins) implements DerivedDesign {
        @Override
        public List<Prongs> prongs() {
            return whole.prongs().stream().filter(each -> !pins.contains(each)).toList();
        }
    }

    /** All pins of that name. */
    static Mesh mesh(Ring ring, Prongs prongs) {
        StoneLayout layout = ring.layout(prongs.row());
        double root = ring.pinRoot(prongs);
        MeshBuilder all = new MeshBuilder(1024, 2048);
        for (int i = 0; i < layout.gaps().size(); i++) {
            StoneLayout.Place gap = layout.gaps().get(i);
            double across = ring.pinAcross(prongs, layout.even() ? 0 : i);
            for (double off : prongs.perGap() == 1 ? new double[] {0} : new double[] {-across, across}) {
                pin(all, gap, off, root, prongs, layout.row());
            }
        }
        return all.build();
    }

    /** How high the bead stands above the girdle line, mm. */
    static double tipMm(Prongs prongs, StoneRow row) {
        double crown = BrilliantProportions.REFERENCE.crownHeightPercent()
                / 100
                * row.size().widthMm();
        double asCast = prongs.riseMm() + prongs.diameterMm() / 2;
        double usual = Math.max(girdleMm(row) + USUAL_TIP * crown, row.sinkMm() + PROUD * prongs.diameterMm() / 2);
        return prongs.setHeightMm().orElse(Math.min(asCast, usual));
    }

    private static double girdleMm(StoneRow row) {
        return row.girdleShare() * row.size().widthMm();
    }

    private static void pin(
            MeshBuilder all, StoneLayout.Place gap, double off, double root, Prongs prongs, StoneRow row) {
        Vector3d sideways = new Vector3d(gap.sideways());
        Vector3d foot = new Vector3d(gap.centre()).fma(off, sideways);
        Vector3d along = new Vector3d(gap.along());
        Vector3d axis = new Vector3d(gap.axis());
        double radius = prongs.diameterMm() / 2;
        double tip = tipMm(prongs, row);
        // The bead is widest where it comes out of the metal beside it: at the surface, or at the girdle's upper edge
        // if that is higher.
        double girdle = Math.min(girdleMm(row), tip / 2);
        double widest = row.sinkMm() < tip ? Math.max(girdle, row.sinkMm()) : girdle;
        double below = Math.max(BELOW * (tip - widest), widest - girdle);
        double lean = -Math.signum(off) * LEAN * radius;
        Lathe lathe = new Lathe(all, foot, sideways, along, axis);
        lathe.ring(-root, 0, radius, radius);
        lathe.ring(widest, 0, radius, radius);
        lathe.closed(SHANK);
        for (int i = 0; i <= STEPS; i++) {
            double angle = StrictMath.PI / 2 * (2.0 * i / STEPS - 1);
            double height = (i < STEPS / 2.0 ? below : tip - widest) * StrictMath.sin(angle);
            double share = StrictMath.cos(angle);
            lathe.ring(widest + height, lean, share * ACROSS * radius, share * ALONG * radius);
        }
        lathe.closed(BEAD);
    }

    /** Lays oval rings one above the other and closes them to a body. */
    private static final class Lathe {
        private final MeshBuilder all;
        private final Vector3d foot;
        private final Vector3d sideways;
        private final Vector3d along;
        private final Vector3d axis;
        private int rings;

        Lathe(MeshBuilder all, Vector3d foot, Vector3d sideways, Vector3d along, Vector3d axis) {
            this.all = all;
            this.foot = foot;
            this.sideways = sideways;
            this.along = along;
            this.axis = axis;
        }

        void ring(double height, double aside, double across, double length) {
            for (int i = 0; i < FACETS; i++) {
                double turn = 2 * StrictMath.PI * i / FACETS;
                Vector3d at = new Vector3d(foot)
                        .fma(aside + across * StrictMath.cos(turn), sideways)
                        .fma(length * StrictMath.sin(turn), along)
                        .fma(height, axis);
                all.vertex(at.x, at.y, at.z);
            }
            rings++;
        }

        /** Joins the rings since the last body, from the lowest up; sideways, along and axis are a left-handed three. */
        void closed(int surface) {
            int first = all.vertexCount() - rings * FACETS;
            for (int ring = 0; ring + 1 < rings; ring++) {
                for (int i = 0; i < FACETS; i++) {
                    int here = first + ring * FACETS + i;
                    int next = first + ring * FACETS + (i + 1) % FACETS;
                    all.triangle(here, next + FACETS, next, surface);
                    all.triangle(here, here + FACETS, next + FACETS, surface);
                }
            }
            int last = first + (rings - 1) * FACETS;
            for (int i = 1; i + 1 < FACETS; i++) {
                all.triangle(first, first + i, first + i + 1, surface);
                all.triangle(last, last + i + 1, last + i, surface);
            }
            rings = 0;
        }
    }
}

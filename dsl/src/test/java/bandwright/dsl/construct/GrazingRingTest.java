// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import bandwright.dsl.geometry.operation.SelfCrossing;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.model.Arc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

/** Rings whose seats, pins and grooves just touch, or overlap, or end where another begins. */
class GrazingRingTest {
    record Grazing(String what, AnyRing ring) {
        @Override
        public String toString() {
            return what;
        }
    }

    private static final HarbourLight BASE = HarbourLight.REFERENCE;

    private static AnyRing ring(
            double grooveWidth, double depth, double sink, int stones, double hole, double bearing, double clearance) {
        return pins(grooveWidth, depth, sink, stones, hole, bearing, clearance, 2, 0.55, 0.42);
    }

    private static AnyRing pins(
            double grooveWidth,
            double depth,
            double sink,
            int stones,
            double hole,
            double bearing,
            double clearance,
            int perGap,
            double pin,
            double pinAcross) {
        return new AnyRing(
                BASE,
                grooveWidth,
                depth,
                0,
                sink,
                Arc.FULL,
                stones,
                List.of(0.0),
                false,
                hole,
                bearing,
                clearance,
                perGap,
                pin,
                pinAcross);
    }

    static Stream<Grazing> rings() {
        return Stream.of(
                new Grazing("a bore as wide as the groove", ring(1.52, 1, 0.25, 40, 0.8, 0.35, 0.01)),
                new Grazing("a stone as wide as the groove", ring(1.5, 1, 0.25, 40, 0.8, 0.35, 0)),
                new Grazing("a girdle on the surface", ring(1.9, 1, 0, 40, 0.8, 0.35, 0.01)),
                new Grazing("a bearing that ends on the floor", ring(1.9, 1, 0.65, 40, 0.8, 0.35, 0.01)),
                new Grazing("a girdle on the floor", ring(1.9, 0.8, 0.8, 40, 0.8, 0.35, 0.01)),
                new Grazing("stones that overlap", ring(1.9, 1, 0.25, 46, 0.8, 0.35, 0.01)),
                new Grazing("stones that overlap much", ring(1.9, 1, 0.25, 70, 0.8, 0.35, 0.01)),
                new Grazing("a single stone", ring(1.9, 1, 0.25, 1, 0.8, 0.35, 0.01)),
                new Grazing("two stones", ring(1.9, 1, 0.25, 2, 0.8, 0.35, 0.01)),
                new Grazing("three stones", ring(1.9, 1, 0.25, 3, 0.8, 0.35, 0.01)),
                new Grazing("pins against the wall", pins(1.9, 1, 0.25, 40, 0.8, 0.35, 0.01, 2, 0.55, 0.675)),
                new Grazing("pins half out of the wall", pins(1.9, 1, 0.25, 40, 0.8, 0.35, 0.01, 2, 0.55, 0.95)),
                new Grazing("two pins that touch", pins(1.9, 1, 0.25, 40, 0.8, 0.35, 0.01, 2, 0.55, 0.275)),
                new Grazing("two pins in one place", pins(1.9, 1, 0.25, 40, 0.8, 0.35, 0.01, 2, 0.55, 0)),
                new Grazing("two pins that overlap", pins(1.9, 1, 0.25, 40, 0.8, 0.35, 0.01, 2, 0.55, 0.1)),
                new Grazing("pins that begin on the floor", pins(1.9, 1, 0.25, 40, 0.8, 0.75, 0.01, 1, 0.55, 0.4)),
                new Grazing("a hole as wide as the stone", ring(1.9, 1, 0.25, 40, 1.5, 0.35, 0)),
                new Grazing("a flat bearing", ring(1.9, 1, 0.25, 40, 0.8, 0, 0.01)));
    }

    @ParameterizedTest
    @MethodSource("rings")
    void bodies_are_closed_and_do_not_cross_themselves(Grazing grazing) {
        Ring ring = new Workshop().ring(grazing.ring());
        for (Body body : ring.bodies()) {
            assertThat(MeshMeasures.closednessFault(body.mesh()))
                    .as(body.name())
                    .isEmpty();
            assertThat(SelfCrossing.depth(body.mesh())).as(body.name()).isLessThan(1e-6);
            assertThat(MeshMeasures.volume(body.mesh()))
                    .as(body.name())
                    .isPositive()
                    .isCloseTo(body.volumeMm3(), withinPercentage(0.03));
        }
    }

    @ParameterizedTest
    @MethodSource("rings")
    void without_use_of_symmetry_they_are_the_same(Grazing grazing) {
        Ring one = new Workshop().ring(grazing.ring());
        // Turned by a little, nothing is its own mirror image any more.
        Ring other = new Workshop().ring(grazing.ring().around(new Arc(360, 1.234)));
        for (Body body : one.bodies()) {
            Body turned = other.body(body.name());
            assertThat(MeshMeasures.closednessFault(turned.mesh()))
                    .as(body.name())
                    .isEmpty();
            assertThat(turned.volumeMm3()).as(body.name()).isCloseTo(body.volumeMm3(), withinPercentage(0.02));
        }
    }
}

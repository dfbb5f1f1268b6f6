// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import bandwright.dsl.geometry.operation.SelfCrossing;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;
import bandwright.dsl.model.Arc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

/**
 * What holds for every ring of a family, tried on random ones; the number of a ring is its seed. The environment variable
 * {@code BANDWRIGHT_LONG_TESTS} makes all of them ten times as many.
 */
class RandomRingTest {
    private static final int TIMES = System.getenv("BANDWRIGHT_LONG_TESTS") == null ? 1 : 10;

    private static AnyRing design(int seed) {
        return AnyRing.random(new Random(seed));
    }

    private static Ring ring(int seed) {
        return new Workshop().ring(design(seed));
    }

    @Test
    void bodies_fill_no_more_than_the_band() {
        IntStream.range(0, 10_000 * TIMES).parallel().forEach(seed -> {
            Ring ring = ring(seed);
            double band = ring.design()
                    .bands()
                    .get(0)
                    .stations()
                    .get(0)
                    .section()
                    .outline()
                    .translated(0, ring.design().bands().get(0).finger().innerRadiusMm())
                    .moments()
                    .volumeAboutX();
            double sum = 0;
            for (PartSection part : ring.sections()) {
                double turned = part.region().moments().volumeAboutX();
                sum += turned;
                double volume = ring.body(part.name()).volumeMm3();
                assertThat(volume).as("%s of ring %d", part.name(), seed).isPositive();
                if (((AnyRing) ring.design()).pinsPerGap() == 0 || !part.name().equals("stripe")) {
                    assertThat(volume).as("%s of ring %d", part.name(), seed).isLessThanOrEqualTo(turned * (1 + 1e-12));
                }
            }
            if (((AnyRing) ring.design()).fit() == 0) {
                assertThat(sum).as("parts of ring %d", seed).isCloseTo(band, withinPercentage(1e-8));
            } else {
                assertThat(sum).as("parts of ring %d", seed).isLessThan(band);
            }
        });
    }

    @Test
    void meshes_are_closed() {
        IntStream.range(0, 1_500 * TIMES).parallel().forEach(seed -> {
            for (Body body : ring(seed).bodies()) {
                assertThat(MeshMeasures.closednessFault(body.mesh()))
                        .as("%s of ring %d", body.name(), seed)
                        .isEmpty();
                assertThat(MeshMeasures.volume(body.mesh()))
                        .as("%s of ring %d", body.name(), seed)
                        .isCloseTo(body.volumeMm3(), withinPercentage(0.03));
                if (seed % 50 == 0) {
                    assertThat(SelfCrossing.depth(body.mesh()))
                            .as("crossing of %s of ring %d", body.name(), seed)
                            .isLessThan(1e-6);
                }
            }
        });
    }

    /** Arcs anywhere round the ring, rows that stand staggered: nothing is its own mirror image. */
    @Test
    void meshes_without_symmetry_are_closed() {
        IntStream.range(0, 12 * TIMES).parallel().forEach(seed -> {
            Random random = new Random(seed);
            AnyRing arc = design(seed).around(new Arc(40 + 300 * random.nextDouble(), 360 * random.nextDouble()));
            AnyRing staggered = AnyRing.lines(2).across(List.of(-0.7, 0.75), true);
            for (AnyRing design : seed == 0 ? List.of(arc, staggered) : List.of(arc)) {
                for (Body body : new Workshop().ring(design).bodies()) {
                    assertThat(MeshMeasures.closednessFault(body.mesh()))
                            .as("%s of ring %d", body.name(), seed)
                            .isEmpty();
                    assertThat(MeshMeasures.volume(body.mesh()))
                            .as("%s of ring %d", body.name(), seed)
                            .isCloseTo(body.volumeMm3(), withinPercentage(0.03));
                }
            }
        });
    }

    /** One stone's wedge, copied, against all stones cut one and all from the whole ring. */
    @Test
    void the_symmetric_way_and_the_general_way_agree() {
        IntStream.range(0, 40 * TIMES).parallel().forEach(seed -> {
            Ring ring = ring(seed);
            for (Body body : ring.bodies()) {
                if (ring.isTurned(body.name())) {
                    continue;
                }
                double general = general(ring, body).volumeMm3();
                assertThat(general / body.volumeMm3())
                        .as("%s of ring %d", body.name(), seed)
                        .isEqualTo(1, within(1e-4));
            }
        });
    }

    /** The same part as if nothing about it repeated. */
    private static Body general(Ring ring, Body body) {
        Workshop.Recipe known = recipe(ring, body);
        Workshop.Recipe recipe = new Workshop.Recipe(known.section(), known.cuts(), known.additions(), 0);
        return new Body(body.section(), new BodyMaker(recipe, curve -> 0, 0).make());
    }

    private static Workshop.Recipe recipe(Ring ring, Body body) {
        AnyRing design = (AnyRing) ring.design();
        StoneLayout layout = ring.layout("lights");
        double inner = design.bands().get(0).finger().innerRadiusMm();
        double outer = inner + design.base().height();
        Surfaces surfaces = new Surfaces();
        List<Feature> cuts = SeatShape.of(design.seats().get(0), layout, inner, outer, surfaces);
        List<Feature> pins = !body.name().equals("stripe") || design.pinsPerGap() == 0
                ? List.of()
                : List.of(PinShape.of(design.prongs().get(0), layout, design.bearing(), surfaces));
        return new Workshop.Recipe(body.section().region(), cuts, pins, 1);
    }

    @Test
    void there_and_back_again_gives_the_same_bytes() {
        for (int seed = 0; seed < 20 * TIMES; seed++) {
            AnyRing design = design(seed);
            HarbourLight base = design.base();
            HarbourLight wider = new HarbourLight(
                    base.iso() + 4, base.width() + 1, base.side(), base.height(), base.stone(), base.gap());
            Workshop workshop = new Workshop();
            List<Mesh> before = meshes(workshop.ring(design));
            List<Mesh> between = meshes(workshop.ring(design.with(wider)));
            List<Mesh> after = meshes(workshop.ring(design));
            assertThat(before.get(0).positions()).isNotEqualTo(between.get(0).positions());
            same(before, after, seed);
            same(before, meshes(new Workshop().ring(design)), seed);
        }
    }

    @Test
    void four_threads_at_once_give_the_same_bytes() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            for (int seed = 100; seed < 100 + 5 * TIMES; seed++) {
                AnyRing design = design(seed);
                List<Mesh> alone = meshes(new Workshop().ring(design));
                Workshop shared = new Workshop();
                List<Callable<List<Mesh>>> tasks = new ArrayList<>();
                for (int i = 0; i < 4; i++) {
                    Workshop workshop = i % 2 == 0 ? shared : new Workshop();
                    tasks.add(() -> meshes(workshop.ring(design)));
                }
                for (Future<List<Mesh>> made : threads.invokeAll(tasks)) {
                    same(alone, made.get(), seed);
                }
            }
        } finally {
            threads.shutdown();
        }
    }

    private static List<Mesh> meshes(Ring ring) {
        return ring.bodies().stream().map(Body::mesh).toList();
    }

    private static void same(List<Mesh> a, List<Mesh> b, int seed) {
        assertThat(a).hasSameSizeAs(b);
        for (int i = 0; i < a.size(); i++) {
            assertThat(a.get(i).positions())
                    .as("ring %d", seed)
                    .isEqualTo(b.get(i).positions());
            assertThat(a.get(i).triangles())
                    .as("ring %d", seed)
                    .isEqualTo(b.get(i).triangles());
        }
    }
}

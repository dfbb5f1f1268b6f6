// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import bandwright.dsl.geometry.solid.MeshMeasures;
import org.junit.jupiter.api.Test;

class ReferenceRingTest {
    @Test
    void volumes_are_those_found_by_point_membership() {
        Ring ring = new Workshop().ring(HarbourLight.REFERENCE);
        for (Body b : ring.bodies()) {
            System.out.println(b.name() + " " + b.volumeMm3() + " " + b.mesh().triangleCount() + " " + MeshMeasures.closednessFault(b.mesh())+" "+MeshMeasures.volume(b.mesh())+" section "+b.section().region().moments().volumeAboutX());
        }
        for (int i = 0; i < 200; i++) {
            long t = System.nanoTime();
            Ring r = new Workshop().ring(HarbourLight.REFERENCE);
            r.bodies();
            long u = System.nanoTime();
            r.bodies().forEach(Body::mesh);
            if (i % 40 == 39) System.out.println((u - t) / 1e6 + " " + (System.nanoTime() - u) / 1e6);
        }
        for (Body b : ring.bodies()) {
            for (int i = 0; i < 3; i++) {
            long t = System.nanoTime();
            System.out.println(b.name() + " " + b.wall() + " " + (System.nanoTime() - t) / 1e6);
            }
        }
        assertThat(ring.layout("lights").count()).isEqualTo(40);
        assertThat(ring.layout("lights").gapMm()).isEqualTo(0.187074, within(1e-6));
        assertThat(ring.body("shank").volumeMm3() + ring.body("collar").volumeMm3())
                .isCloseTo(346.3674, withinPercentage(0.01));
        assertThat(ring.body("stripe").volumeMm3()).isCloseTo(86.2941, withinPercentage(0.01));
        assertThat(ring.body("collar").volumeMm3()).isEqualTo(58.390727, within(1e-6));
    }
}

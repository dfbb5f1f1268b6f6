// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import bandwright.dsl.geometry.solid.MeshMeasures;

/** The reference ring from its model (no text is read): everything made anew, and after one edit. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RingBenchmark {
    private final Workshop warm = new Workshop();
    private int edits;

    @Benchmark
    public double weights() {
        return volumes(new Workshop().ring(HarbourLight.REFERENCE));
    }

    @Benchmark
    public int meshes() {
        return triangles(new Workshop().ring(HarbourLight.REFERENCE));
    }

    @Benchmark
    public boolean meshesProvenClosed() {
        Ring ring = new Workshop().ring(HarbourLight.REFERENCE);
        return ring.bodies().stream().allMatch(body -> MeshMeasures.isClosed(body.mesh()));
    }

    /** A finger size never seen before: every part changes. */
    @Benchmark
    public double weightsAfterAnotherSize() {
        HarbourLight other = new HarbourLight(50 + edits++ % 1_000_000 * 1e-5, 4.6, 1.25, 1.9, 1.5, 0.15);
        return volumes(warm.ring(other));
    }

    /** A width never seen before: the stripe is the same, the shank is not. */
    @Benchmark
    public double weightsAfterAnotherWidth() {
        HarbourLight other = new HarbourLight(57, 4.6 + edits++ % 1_000_000 * 1e-7, 1.25, 1.9, 1.5, 0.15);
        return volumes(warm.ring(other));
    }

    /** A change of something that no body depends on, such as a price. */
    @Benchmark
    public double weightsAfterAChangeElsewhere() {
        return volumes(warm.ring(HarbourLight.REFERENCE));
    }

    @Benchmark
    public double sections() {
        return new Workshop()
                .ring(HarbourLight.REFERENCE).sections().stream()
                        .mapToDouble(part -> part.region().moments().volumeAboutX())
                        .sum();
    }

    static double volumes(Ring ring) {
        return ring.bodies().stream().mapToDouble(Body::volumeMm3).sum();
    }

    static int triangles(Ring ring) {
        return ring.bodies().stream()
                .mapToInt(body -> body.mesh().triangleCount())
                .sum();
    }
}

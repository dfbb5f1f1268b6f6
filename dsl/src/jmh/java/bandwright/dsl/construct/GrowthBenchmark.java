// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import bandwright.dsl.model.Arc;

/** How cost grows with the number of stones: lines of 46 stones and 92 pins beside each other on a band as broad as they need. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx3g"})
public class GrowthBenchmark {
    @Param({"1", "10", "100"})
    private int lines;

    @Benchmark
    public double weights() {
        return RingBenchmark.volumes(new Workshop().ring(AnyRing.lines(lines)));
    }

    @Benchmark
    public int meshes() {
        return RingBenchmark.triangles(new Workshop().ring(AnyRing.lines(lines)));
    }

    /** Arcs just off the top have no symmetry to be used: every seat is cut by itself. */
    @Benchmark
    public int meshesOfTheGeneralWay() {
        return RingBenchmark.triangles(new Workshop().ring(AnyRing.lines(lines).around(new Arc(358, 10))));
    }
}

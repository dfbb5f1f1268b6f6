// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.geometry.solid.Mesh;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A part as a body. Its volume is known at once; the closed mesh is made when it is first asked for.
 *
 * <p>Volume: what revolves is exact (Pappus on lines and arcs). What seats and pins change is the difference of two faceted
 * bodies whose facets keep the volume of the round ones, so only the second-order rest of the facets enters: below 1 in
 * 10⁴ of the part at the settings used here, measured against the reference ring.
 */
public final class Body {
    private final PartSection section;
    private final double volumeMm3;
    private final Mesh sample;
    private final Supplier<Mesh> maker;
    private @Nullable Mesh mesh;

    Body(PartSection section, double volumeMm3, Mesh sample, Supplier<Mesh> maker) {
        this.section = section;
        this.volumeMm3 = volumeMm3;
        this.sample = sample;
        this.maker = maker;
    }

    public PartSection section() {
        return section;
    }

    public String name() {
        return section.name();
    }

    public double volumeMm3() {
        return volumeMm3;
    }

    /** Triangles of which every triangle of the body is a copy by symmetry; the whole mesh where there is no symmetry. */
    public Mesh sample() {
        return sample.isEmpty() ? mesh() : sample;
    }

    /** The whole body, closed. */
    public synchronized Mesh mesh() {
        if (mesh == null) {
            mesh = maker.get();
        }
        return mesh;
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.measure;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.operation.ThinnestWall;
import bandwright.dsl.geometry.solid.MeshMeasures;

/** Measures of a part of a ring. */
public final class PartMeasures {
    private final Ring ring;
    private final Body body;

    public PartMeasures(Ring ring, String part) {
        this.ring = ring;
        this.body = ring.body(part);
    }

    public double volumeMm3() {
        return body.volumeMm3();
    }

    public double densityGPerCm3() {
        return body.section().metal().densityGPerCm3();
    }

    /** Volume times density; a cubic centimetre is a thousand cubic millimetres. */
    public double weightG() {
        return volumeMm3() * densityGPerCm3() / 1000;
    }

    /** All of the skin, inside and in holes too, mm². */
    public double surfaceMm2() {
        return MeshMeasures.surface(body.mesh());
    }

    /** The shortest straight way through the metal between two faces that look away from each other. */
    public Optional<ThinnestWall.Wall> wall() {
        return body.wall();
    }

    /** Extent along the finger, mm, pins left out; of a part that changes on its way round, where it is widest. */
    public double widthMm() {
        return ring.extent(List.of(body.name())).widthMm();
    }

    /** Extent out from the finger, mm, pins left out; of a part that changes on its way round, where it is highest. */
    public double heightMm() {
        return ring.extent(List.of(body.name())).heightMm();
    }
}

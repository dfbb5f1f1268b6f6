// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.geometry.solid.MeshMeasures;

/**
 * From the size of a casting to that of its pattern. A length L of the casting is L / (1 - s) in the pattern. By direction:
 * the bore's radius goes by the shrinkage around, what lies outside of it by that out, heights along the finger by that
 * across. Such rings are measured: inner diameter, width and thickness of one do not shrink alike (T. Teague, JETT Research,
 * Santa Fe Symposium paper, figures quoted in a trade forum).
 */
public final class Shrinkage {
    private final double bore;
    private final double around;
    private final double across;
    private final double out;

    /**
     * @param boreMm inner radius of the casting, mm: where the thickness begins
     */
    public Shrinkage(Allowances allowances, double boreMm) {
        this.bore = boreMm;
        this.around = 1 / (1 - allowances.around());
        this.across = 1 / (1 - allowances.across());
        this.out = 1 / (1 - allowances.out());
    }

    /** The pattern's mesh: every vertex moved, nothing else changed, so a closed mesh stays closed. */
    public Mesh pattern(Mesh casting) {
        double[] moved = casting.positions().clone();
        for (int at = 0; at < moved.length; at += 3) {
            double x = moved[at];
            double y = moved[at + 1];
            double radius = Math.sqrt(x * x + y * y);
            // Metal on the axis itself there is none; a pattern as large all round needs no radius.
            double scale = around == out || radius == 0 ? around : (bore * around + (radius - bore) * out) / radius;
            moved[at] = x * scale;
            moved[at + 1] = y * scale;
            moved[at + 2] *= across;
        }
        return new Mesh(moved, casting.triangles(), casting.surfaces());
    }

    /** How many times the volume of the casting its pattern has. */
    public double volumeRatio(Mesh casting) {
        if (around == across && across == out) {
            return around * around * around;
        }
        return MeshMeasures.volume(pattern(casting)) / MeshMeasures.volume(casting);
    }
}

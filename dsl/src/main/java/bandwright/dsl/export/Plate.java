// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.geometry.solid.Mesh;

/**
 * How parts lie: assembled, each where it belongs in the ring, or side by side on a plate, the finger's axis upright.
 *
 * @param laidOut whether they lie on a plate
 * @param spacingMm between their boxes there
 */
public record Plate(boolean laidOut, double spacingMm) {
    public static final Plate ASSEMBLED = new Plate(false, 0);

    /** Where a mesh is moved to, mm. */
    public record Shift(double x, double y, double z) {}

    /**
     * Where each part is moved so that none is below 0 in any direction: together if assembled, else in rows, about as many of them as
     * parts in a row, in the order of the parts.
     */
    public List<Shift> shifts(List<Mesh> meshes) {
        List<Box> boxes = meshes.stream().map(Box::of).toList();
        List<Shift> shifts = new ArrayList<>();
        if (!laidOut) {
            Box all = boxes.stream().reduce(Box::with).orElseThrow();
            meshes.forEach(mesh -> shifts.add(all.toOrigin(0, 0)));
            return shifts;
        }
        int perRow = (int) Math.ceil(Math.sqrt(meshes.size()));
        double left = 0;
        double front = 0;
        double deepest = 0;
        for (int i = 0; i < boxes.size(); i++) {
            if (i > 0 && i % perRow == 0) {
                left = 0;
                front += deepest + spacingMm;
                deepest = 0;
            }
            Box box = boxes.get(i);
            shifts.add(box.toOrigin(left, front));
            left += box.maxX - box.minX + spacingMm;
            deepest = Math.max(deepest, box.maxY - box.minY);
        }
        return shifts;
    }

    private record Box(double minX, double minY, double minZ, double maxX, double maxY) {
        static Box of(Mesh mesh) {
            Box box = new Box(
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.NEGATIVE_INFINITY,
                    Double.NEGATIVE_INFINITY);
            for (int v = 0; v < mesh.vertexCount(); v++) {
                box = box.with(new Box(mesh.x(v), mesh.y(v), mesh.z(v), mesh.x(v), mesh.y(v)));
            }
            return box;
        }

        Box with(Box other) {
            return new Box(
                    Math.min(minX, other.minX),
                    Math.min(minY, other.minY),
                    Math.min(minZ, other.minZ),
                    Math.max(maxX, other.maxX),
                    Math.max(maxY, other.maxY));
        }

        Shift toOrigin(double left, double front) {
            return new Shift(left - minX, front - minY, -minZ);
        }
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;

/** Straight pieces in cells of space, to find those near another without comparing each with each. */
final class Nearby {
    private final double cell;
    private final Map<Cell, List<Integer>> cells = new HashMap<>();

    private record Cell(long x, long y, long z) {}

    /** @param reach pieces no farther apart than this, mm, are found; some farther ones too */
    Nearby(double reach) {
        // Pieces are known by points half a cell apart at the most: those of two within reach are within one cell.
        this.cell = 2 * reach;
    }

    void add(int name, double[] from, double[] to) {
        for (Cell each : along(from, to)) {
            List<Integer> names = cells.computeIfAbsent(each, unused -> new ArrayList<>());
            if (names.isEmpty() || names.get(names.size() - 1) != name) {
                names.add(name);
            }
        }
    }

    /** Names of those near a piece, rising. */
    NavigableSet<Integer> to(double[] from, double[] to) {
        NavigableSet<Integer> near = new TreeSet<>();
        for (Cell each : along(from, to)) {
            for (int x = -1; x <= 1; x++) {
                for (int y = -1; y <= 1; y++) {
                    for (int z = -1; z <= 1; z++) {
                        near.addAll(cells.getOrDefault(new Cell(each.x + x, each.y + y, each.z + z), List.of()));
                    }
                }
            }
        }
        return near;
    }

    private List<Cell> along(double[] from, double[] to) {
        double x = to[0] - from[0];
        double y = to[1] - from[1];
        double z = to[2] - from[2];
        int steps = Math.max(1, (int) Math.ceil(2 * Math.sqrt(x * x + y * y + z * z) / cell));
        List<Cell> along = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            along.add(new Cell(
                    (long) Math.floor((from[0] + share * x) / cell),
                    (long) Math.floor((from[1] + share * y) / cell),
                    (long) Math.floor((from[2] + share * z) / cell)));
        }
        return along;
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads DXF by itself, knowing nothing of how ours is written: entities with their groups, and what they measure. */
public final class DxfReading {
    /** A kind, its layer, and its groups in order. */
    public record Entity(String kind, String layer, Map<Integer, List<String>> groups) {
        double number(int code) {
            return Double.parseDouble(
                    groups.getOrDefault(code, List.of("nothing")).get(0));
        }
    }

    private final List<String> layers = new ArrayList<>();
    private final List<Entity> entities = new ArrayList<>();

    public DxfReading(byte[] file) {
        String[] lines = new String(file, StandardCharsets.US_ASCII).split("\n", -1);
        String section = "";
        Entity last = null;
        for (int i = 0; i + 1 < lines.length; i += 2) {
            int code = Integer.parseInt(lines[i].strip());
            String value = lines[i + 1];
            if (code == 0) {
                last = new Entity(value, "", new TreeMap<>());
                if (section.equals("ENTITIES")) {
                    entities.add(last);
                }
            } else if (last != null) {
                if (code == 2 && last.kind().equals("SECTION")) {
                    section = value;
                } else if (code == 2 && last.kind().equals("LAYER")) {
                    layers.add(value);
                } else if (code == 8 && section.equals("ENTITIES")) {
                    last = new Entity(last.kind(), value, last.groups());
                    entities.set(entities.size() - 1, last);
                }
                last.groups().computeIfAbsent(code, key -> new ArrayList<>()).add(value);
            }
        }
    }

    public List<String> layers() {
        return layers;
    }

    public List<Entity> entities() {
        return entities;
    }

    /** What the closed shapes of a layer hold, by Green's theorem over their pieces, whichever way round each was drawn. */
    public double area(String layer) {
        double sum = 0;
        List<double[]> pieces = new ArrayList<>();
        for (int i = 0; i < entities.size(); i++) {
            Entity entity = entities.get(i);
            if (!entity.layer().equals(layer)) {
                continue;
            }
            switch (entity.kind()) {
                case "CIRCLE" -> sum += StrictMath.PI * entity.number(40) * entity.number(40);
                case "POLYLINE" -> sum += polyline(i + 1);
                case "LINE" ->
                    pieces.add(
                            new double[] {entity.number(10), entity.number(20), entity.number(11), entity.number(21), 0
                            });
                case "ARC" -> pieces.add(arc(entity));
                default -> {}
            }
        }
        return sum + chained(pieces);
    }

    private double polyline(int first) {
        List<double[]> corners = new ArrayList<>();
        for (int i = first; entities.get(i).kind().equals("VERTEX"); i++) {
            corners.add(
                    new double[] {entities.get(i).number(10), entities.get(i).number(20)});
        }
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            double[] a = corners.get(i);
            double[] b = corners.get((i + 1) % corners.size());
            twice += a[0] * b[1] - a[1] * b[0];
        }
        return Math.abs(twice) / 2;
    }

    /** Ends, and the area between the arc and its chord, positive if it lies right of the way from the first end. */
    private static double[] arc(Entity arc) {
        double from = Math.toRadians(arc.number(50));
        double to = Math.toRadians(arc.number(51));
        double sweep = to > from ? to - from : to - from + 2 * StrictMath.PI;
        double r = arc.number(40);
        return new double[] {
            arc.number(10) + r * StrictMath.cos(from),
            arc.number(20) + r * StrictMath.sin(from),
            arc.number(10) + r * StrictMath.cos(to),
            arc.number(20) + r * StrictMath.sin(to),
            r * r / 2 * (sweep - StrictMath.sin(sweep))
        };
    }

    /** Pieces joined end to end, each taken in whatever direction fits. */
    private static double chained(List<double[]> pieces) {
        double all = 0;
        while (!pieces.isEmpty()) {
            double[] first = pieces.remove(0);
            double x = first[2];
            double y = first[3];
            double twice = first[0] * first[3] - first[1] * first[2] + 2 * first[4];
            for (boolean joined = true; joined; ) {
                joined = false;
                for (int i = 0; i < pieces.size() && !joined; i++) {
                    double[] next = pieces.get(i);
                    boolean forwards = near(next[0], next[1], x, y);
                    if (forwards || near(next[2], next[3], x, y)) {
                        double ex = forwards ? next[2] : next[0];
                        double ey = forwards ? next[3] : next[1];
                        twice += x * ey - y * ex + (forwards ? 2 : -2) * next[4];
                        x = ex;
                        y = ey;
                        pieces.remove(i);
                        joined = true;
                    }
                }
            }
            if (!near(x, y, first[0], first[1])) {
                throw new IllegalStateException("A shape is open at " + x + ", " + y);
            }
            all += Math.abs(twice) / 2;
        }
        return all;
    }

    private static boolean near(double ax, double ay, double bx, double by) {
        return Math.abs(ax - bx) < 1e-4 && Math.abs(ay - by) < 1e-4;
    }

    /** How many entities of each kind a layer has. */
    public Map<String, Integer> kinds(String layer) {
        Map<String, Integer> kinds = new LinkedHashMap<>();
        entities.stream()
                .filter(entity -> entity.layer().equals(layer))
                .forEach(entity -> kinds.merge(entity.kind(), 1, Integer::sum));
        return kinds;
    }
}

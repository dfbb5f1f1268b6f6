// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.view.render;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.geometry.plane.Point;

/** Makes long lines of short pieces that meet, without the points that a straight line does not need. */
final class LineJoiner {
    /** Ends nearer than this meet, mm. */
    private static final double MET_MM = 1e-3;

    /** How far a line may leave the points that it passes over, mm. */
    private static final double LEFT_OUT_MM = 0.004;

    /** What is shorter is a speck, mm. */
    private static final double SPECK_MM = 0.06;

    /** What is shorter is left out where it lies on a longer line: ends of edges that lie one behind the other, mm. */
    private static final double SHORT_MM = 0.3;

    /** How near to a line one has to be to lie on it, mm. */
    private static final double UPON_MM = 0.008;

    private record Cell(long x, long y) {
        static Cell of(Point point) {
            return new Cell(Math.round(point.x() / MET_MM), Math.round(point.y() / MET_MM));
        }
    }

    private record Piece(Point from, Point to) {}

    private final List<Piece> pieces = new ArrayList<>();
    private final Map<Cell, List<Integer>> ends = new HashMap<>();

    void add(Point from, Point to) {
        Cell start = Cell.of(from);
        Cell end = Cell.of(to);
        if (start.equals(end)) {
            return;
        }
        List<Integer> there = ends.getOrDefault(start, List.of());
        for (int other : there) {
            // What lies one behind the other is drawn once.
            Piece piece = pieces.get(other);
            if (Cell.of(piece.from).equals(end) || Cell.of(piece.to).equals(end)) {
                return;
            }
        }
        ends.computeIfAbsent(start, cell -> new ArrayList<>()).add(pieces.size());
        ends.computeIfAbsent(end, cell -> new ArrayList<>()).add(pieces.size());
        pieces.add(new Piece(from, to));
    }

    List<List<Point>> lines() {
        boolean[] used = new boolean[pieces.size()];
        List<List<Point>> lines = new ArrayList<>();
        for (int i = 0; i < used.length; i++) {
            if (!used[i]) {
                used[i] = true;
                Deque<Point> line = new ArrayDeque<>(List.of(pieces.get(i).from, pieces.get(i).to));
                grow(line, used, false);
                grow(line, used, true);
                List<Point> plain = plain(new ArrayList<>(line));
                if (length(plain) > SPECK_MM) {
                    lines.add(plain);
                }
            }
        }
        return lines.stream()
                .filter(line -> length(line) > SHORT_MM || !isCovered(line, lines))
                .toList();
    }

    private static boolean isCovered(List<Point> line, List<List<Point>> lines) {
        double length = length(line);
        return lines.stream()
                .filter(other -> other != line && length(other) > length)
                .anyMatch(other -> line.stream().allMatch(point -> isUpon(point, other)));
    }

    private static boolean isUpon(Point point, List<Point> line) {
        for (int i = 0; i + 1 < line.size(); i++) {
            if (distance(point, line.get(i), line.get(i + 1)) < UPON_MM) {
                return true;
            }
        }
        return false;
    }

    private void grow(Deque<Point> line, boolean[] used, boolean front) {
        while (true) {
            Point end = front ? line.getFirst() : line.getLast();
            Cell cell = Cell.of(end);
            Point next = null;
            for (int i : ends.getOrDefault(cell, List.of())) {
                if (!used[i]) {
                    used[i] = true;
                    Piece piece = pieces.get(i);
                    next = Cell.of(piece.from).equals(cell) ? piece.to : piece.from;
                    break;
                }
            }
            if (next == null) {
                return;
            } else if (front) {
                line.addFirst(next);
            } else {
                line.addLast(next);
            }
        }
    }

    private static double length(List<Point> line) {
        double length = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            length += line.get(i).distanceTo(line.get(i + 1));
        }
        return length;
    }

    /** Ramer, 1972; Douglas and Peucker, 1973: keeps the point that is furthest off while it is too far off. */
    private static List<Point> plain(List<Point> line) {
        boolean[] kept = new boolean[line.size()];
        kept[0] = true;
        kept[line.size() - 1] = true;
        Deque<int[]> spans = new ArrayDeque<>();
        spans.push(new int[] {0, line.size() - 1});
        while (!spans.isEmpty()) {
            int[] span = spans.pop();
            int furthest = -1;
            double most = LEFT_OUT_MM;
            for (int i = span[0] + 1; i < span[1]; i++) {
                double off = distance(line.get(i), line.get(span[0]), line.get(span[1]));
                if (off > most) {
                    most = off;
                    furthest = i;
                }
            }
            if (furthest >= 0) {
                kept[furthest] = true;
                spans.push(new int[] {span[0], furthest});
                spans.push(new int[] {furthest, span[1]});
            }
        }
        List<Point> plain = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                plain.add(line.get(i));
            }
        }
        return plain;
    }

    private static double distance(Point point, Point from, Point to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double square = dx * dx + dy * dy;
        double share = square > 0 ? ((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / square : 0;
        double held = Math.max(0, Math.min(1, share));
        return point.distanceTo(from.plus(held * dx, held * dy));
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Which point of one cross-section answers to which of another, so that one can change into the other.
 *
 * <ol>
 *   <li>Landmarks: the two inner edges (the lowest of the leftmost and of the rightmost corners), the tops of the side walls where
 *       all outlines have them, and the places on the inner and on the outer surface in the middle of the width.
 *   <li>Between two landmarks, curve answers to curve if all outlines have as many there: outlines of one form keep their corners.
 *   <li>Otherwise points answer that lie at the same share of the way, and every corner of one splits the curves of the others.
 * </ol>
 */
public final class OutlineMatch {
    /** Corners nearer to each other than this share of the way between landmarks count as one. */
    private static final double SAME_SHARE = 1e-6;

    private static final double SAME_MM = 1e-9;

    private OutlineMatch() {}

    /** For each outline its curves, counter-clockwise from the left inner edge, as many for all: those at one index answer to each other. */
    public static List<List<Curve>> match(List<Outline> outlines) {
        List<Sides> sides = outlines.stream().map(Sides::of).toList();
        boolean right = sides.stream().allMatch(one -> !one.right.isEmpty());
        boolean left = sides.stream().allMatch(one -> !one.left.isEmpty());
        List<List<Curve>> matched = new ArrayList<>();
        outlines.forEach(outline -> matched.add(new ArrayList<>()));
        List<List<List<Curve>>> stretches = new ArrayList<>();
        for (Sides one : sides) {
            stretches.add(one.stretches(right, left));
        }
        for (int s = 0; s < stretches.get(0).size(); s++) {
            List<List<Curve>> stretch = new ArrayList<>();
            for (List<List<Curve>> own : stretches) {
                stretch.add(own.get(s));
            }
            List<List<Curve>> pieces = alike(stretch);
            for (int k = 0; k < pieces.size(); k++) {
                matched.get(k).addAll(pieces.get(k));
            }
        }
        return matched;
    }

    /** An outline cut at its landmarks. */
    private record Sides(List<Curve> inner, List<Curve> right, List<Curve> outer, List<Curve> left, double middle) {
        static Sides of(Outline outline) {
            List<Curve> curves = outline.counterClockwise().curves();
            int n = curves.size();
            int first = corner(curves, -1);
            int second = corner(curves, 1);
            double low = curves.get(first).start().x();
            double high = curves.get(second).start().x();
            List<Curve> inner = run(curves, first, second);
            int rightTop = second;
            while (rightTop != first
                    && Math.abs(curves.get(rightTop).end().x() - high) < SAME_MM
                    && curves.get(rightTop) instanceof Line) {
                rightTop = (rightTop + 1) % n;
            }
            int leftTop = first;
            while (leftTop != rightTop
                    && Math.abs(curves.get((leftTop + n - 1) % n).start().x() - low) < SAME_MM
                    && curves.get((leftTop + n - 1) % n) instanceof Line) {
                leftTop = (leftTop + n - 1) % n;
            }
            return new Sides(
                    inner,
                    run(curves, second, rightTop),
                    run(curves, rightTop, leftTop),
                    run(curves, leftTop, first),
                    (low + high) / 2);
        }

        List<List<Curve>> stretches(boolean ownRight, boolean ownLeft) {
            List<List<Curve>> stretches = new ArrayList<>(halves(inner, middle, false));
            List<List<Curve>> over = halves(outer, middle, true);
            List<Curve> rising = new ArrayList<>(ownRight ? List.of() : right);
            rising.addAll(over.get(0));
            List<Curve> falling = new ArrayList<>(over.get(1));
            falling.addAll(ownLeft ? List.of() : left);
            if (ownRight) {
                stretches.add(right);
            }
            stretches.add(rising);
            stretches.add(falling);
            if (ownLeft) {
                stretches.add(left);
            }
            return stretches;
        }

        private static List<Curve> run(List<Curve> curves, int from, int to) {
            List<Curve> run = new ArrayList<>();
            for (int i = from; i != to; i = (i + 1) % curves.size()) {
                run.add(curves.get(i));
            }
            return run;
        }

        /** The curve that starts at the lowest of the outermost corners on one side. */
        private static int corner(List<Curve> curves, int side) {
            int best = 0;
            for (int i = 1; i < curves.size(); i++) {
                Point here = curves.get(i).start();
                Point there = curves.get(best).start();
                double further = side * (here.x() - there.x());
                if (further > SAME_MM || (Math.abs(further) <= SAME_MM && here.y() < there.y())) {
                    best = i;
                }
            }
            return best;
        }
    }

    /** A path cut in two where it passes the middle of the width; where it does so more than once, at the outermost (innermost) place. */
    private static List<List<Curve>> halves(List<Curve> path, double middle, boolean outermost) {
        int best = -1;
        double share = 0;
        double height = 0;
        for (int i = 0; i < path.size(); i++) {
            for (double at : passes(path.get(i), middle)) {
                double y = path.get(i).at(at).y();
                if (best < 0 || (outermost ? y > height : y < height)) {
                    best = i;
                    share = at;
                    height = y;
                }
            }
        }
        List<Curve> before = new ArrayList<>(path.subList(0, Math.max(0, best)));
        List<Curve> after = new ArrayList<>(path.subList(Math.max(0, best), path.size()));
        if (best >= 0 && share > 1 - SAME_SHARE) {
            before.add(after.remove(0));
        } else if (best >= 0 && share > SAME_SHARE) {
            Curve cut = after.remove(0);
            Point point = cut.at(share);
            before.add(cut.between(cut.start(), point));
            after.add(0, cut.between(point, cut.end()));
        }
        return List.of(before, after);
    }

    /** Shares of the way at which a curve passes a place across; arcs are searched in steps and by halving. */
    private static List<Double> passes(Curve curve, double across) {
        int steps = curve instanceof Arc ? 32 : 1;
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            double low = (double) i / steps;
            double high = (double) (i + 1) / steps;
            double atLow = curve.at(low).x() - across;
            double atHigh = curve.at(high).x() - across;
            if (atLow * atHigh > 0 || atLow == atHigh) {
                continue;
            }
            for (int k = 0; k < 60; k++) {
                double half = (low + high) / 2;
                double there = curve.at(half).x() - across;
                if (there * atLow > 0) {
                    low = half;
                } else {
                    high = half;
                }
            }
            shares.add(high);
        }
        return shares;
    }

    private static List<List<Curve>> alike(List<List<Curve>> stretch) {
        if (stretch.stream().mapToInt(List::size).distinct().count() == 1) {
            return stretch;
        }
        TreeSet<Double> all = new TreeSet<>();
        stretch.forEach(path -> all.addAll(shares(path)));
        List<Double> shares = new ArrayList<>();
        for (double share : all) {
            if (share < 1 - SAME_SHARE && share - (shares.isEmpty() ? 0 : shares.get(shares.size() - 1)) > SAME_SHARE) {
                shares.add(share);
            }
        }
        shares.add(1.0);
        return stretch.stream().map(path -> split(path, shares)).toList();
    }

    /** The share of the way at which each curve of a path ends. */
    private static List<Double> shares(List<Curve> path) {
        double whole = path.stream().mapToDouble(Curve::length).sum();
        List<Double> shares = new ArrayList<>();
        double way = 0;
        for (Curve curve : path) {
            way += curve.length();
            shares.add(way / whole);
        }
        return shares;
    }

    private static List<Curve> split(List<Curve> path, List<Double> shares) {
        List<Double> own = shares(path);
        List<Curve> pieces = new ArrayList<>();
        int k = 0;
        Point at = path.get(0).start();
        for (double share : shares) {
            while (k < path.size() - 1 && own.get(k) < share - SAME_SHARE) {
                k++;
            }
            Curve curve = path.get(k);
            double from = k == 0 ? 0 : own.get(k - 1);
            boolean ends = share >= own.get(k) - SAME_SHARE;
            Point end = ends ? curve.end() : curve.at((share - from) / (own.get(k) - from));
            pieces.add(curve.between(at, end));
            at = end;
            k += ends ? 1 : 0;
        }
        return pieces;
    }
}

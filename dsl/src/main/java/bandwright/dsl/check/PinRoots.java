// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.geometry.plane.Bounds;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Prongs;

/** Pins stand in their own part, below the surface too: one that stands in its neighbour's metal keeps the two from being put together, and that metal would be weighed twice. */
final class PinRoots implements Check {
    /** What a pin merely touches it does not stand in, mm. */
    private static final double TOUCH_MM = 1e-4;

    @Override
    public String key() {
        return "pin-root";
    }

    @Override
    public List<Finding> look(Look look) {
        List<Finding> findings = new ArrayList<>();
        for (Prongs prongs : look.ring().design().prongs()) {
            List<PartSection> others = look.ring().sections().stream()
                    .filter(part -> !part.name().equals(prongs.part()))
                    .toList();
            if (!others.isEmpty() && !look.ring().layout(prongs.row()).gaps().isEmpty()) {
                findings.add(root(look, prongs, others));
            }
        }
        return findings;
    }

    private Finding root(Look look, Prongs prongs, List<PartSection> others) {
        StoneLayout layout = look.ring().layout(prongs.row());
        double root = look.ring().pinRoot(prongs);
        double deepest = 0;
        StoneLayout.Place at = layout.gaps().get(0);
        String in = "";
        for (StoneLayout.Place gap : StonePlaces.looked(layout.gaps(), layout, others)) {
            double across = look.ring()
                    .pinAcross(prongs, layout.even() ? 0 : layout.gaps().indexOf(gap));
            for (PartSection other : others) {
                Region metal = look.ring().section(other, gap.angle());
                for (double off : prongs.perGap() == 1 ? new double[] {0} : new double[] {-across, across}) {
                    double width = width(gap.line(), rod(prongs, off, root), metal);
                    if (width > deepest + TOUCH_MM) {
                        deepest = width;
                        at = gap;
                        in = other.name();
                    }
                }
            }
        }
        return look.on(key(), prongs.name())
                .telling(in)
                .at(RingPlace.of(at, StoneChecks.inner(look.ring(), layout.row())))
                .exact()
                .measured(deepest);
    }

    private static List<Point> rod(Prongs prongs, double off, double root) {
        double half = prongs.diameterMm() / 2 - TOUCH_MM;
        double low = -root + TOUCH_MM;
        return List.of(
                new Point(off - half, low),
                new Point(off + half, low),
                new Point(off + half, prongs.riseMm()),
                new Point(off - half, prongs.riseMm()));
    }

    private static double width(StoneLayout.Line line, List<Point> rod, Region metal) {
        return new SeatSection(line)
                .common(rod, metal)
                .map(Bounds::width)
                .map(width -> width + TOUCH_MM)
                .orElse(0.0);
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.StoneLayout;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.quantity.Quantity;

/** Pins that stand inside each other, of one gap or of two, from the girdle line up as cast: rounded rods, whose distance is that of their axes less their radii. */
final class PinPairs implements Check {
    /** Pins farther apart are not looked for. */
    private static final double NEAR_MM = 0.5;

    @Override
    public String key() {
        return "pins-apart";
    }

    /** @param off how far off its row's line, mm */
    private record Pin(Prongs prongs, StoneLayout.Place gap, double off, double inner) {
        double radius() {
            return prongs.diameterMm() / 2;
        }

        double[] from() {
            return at(0);
        }

        double[] to() {
            return at(prongs.riseMm());
        }

        private double[] at(double height) {
            double[] point = gap.centre();
            double[] side = gap.sideways();
            double[] axis = gap.axis();
            for (int k = 0; k < 3; k++) {
                point[k] += off * side[k] + height * axis[k];
            }
            return point;
        }

        static double apart(Pin one, Pin other) {
            return Segments.distance(one.from(), one.to(), other.from(), other.to()) - one.radius() - other.radius();
        }
    }

    @Override
    public List<Finding> look(Look look) {
        List<Pin> pins = new ArrayList<>();
        double widest = 0;
        for (Prongs prongs : look.ring().design().prongs()) {
            widest = Math.max(widest, prongs.diameterMm());
            StoneLayout layout = look.ring().layout(prongs.row());
            double inner = StoneChecks.inner(look.ring(), layout.row());
            for (int gap = 0; gap < layout.gaps().size(); gap++) {
                double across = look.ring().pinAcross(prongs, layout.even() ? 0 : gap);
                for (double off : prongs.perGap() == 1 ? new double[] {0} : new double[] {-across, across}) {
                    pins.add(new Pin(prongs, layout.gaps().get(gap), off, inner));
                }
            }
        }
        Nearby nearby = new Nearby(widest + NEAR_MM);
        for (int i = 0; i < pins.size(); i++) {
            nearby.add(i, pins.get(i).from(), pins.get(i).to());
        }
        double least = Double.POSITIVE_INFINITY;
        Pin one = null;
        Pin other = null;
        for (int i = 0; i < pins.size(); i++) {
            for (int j : nearby.to(pins.get(i).from(), pins.get(i).to()).tailSet(i, false)) {
                double apart = Pin.apart(pins.get(i), pins.get(j));
                if (apart < least - 1e-9) {
                    least = apart;
                    one = pins.get(i);
                    other = pins.get(j);
                }
            }
        }
        return one == null || other == null ? List.of() : List.of(finding(look, one, other, least));
    }

    private Finding finding(Look look, Pin one, Pin other, double least) {
        String[] names = one.prongs.name().equals(other.prongs.name())
                ? new String[] {one.prongs.name()}
                : new String[] {one.prongs.name(), other.prongs.name()};
        double[] a = one.from();
        double[] b = other.from();
        RingPlace at = RingPlace.of((a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2, one.inner);
        return look.on(key(), names)
                .telling(Quantity.millimetres(Math.max(0, -least)).toString())
                .at(at)
                .measured(least);
    }
}

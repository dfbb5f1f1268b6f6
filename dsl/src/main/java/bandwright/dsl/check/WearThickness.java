// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.model.Arc;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;

/**
 * What of a band there is to wear down: the least over the middle half of its finished section and its open grooves ({@link ThinPlace}). With grooves on
 * arcs each stretch between two ends of arcs has a section of its own. Of a band that changes it is where that is lowest of its stations, less the deepest
 * of its grooves outside and inside. Seats are left to the checks of rows.
 */
final class WearThickness {
    private final Look look;
    private final Band band;
    private final List<PartSection> parts;
    private final List<Groove> grooves;

    private WearThickness(Look look, Band band) {
        this.look = look;
        this.band = band;
        this.parts = look.ring().sections().stream()
                .filter(part -> part.band().equals(band))
                .toList();
        this.grooves = look.ring().design().grooves().stream()
                .filter(groove -> parts.stream().anyMatch(part -> groove.from().contains(part.name())))
                .toList();
    }

    static Finding of(Look look, Band band) {
        WearThickness worn = new WearThickness(look, band);
        return band.isEven() ? worn.thinnest().orElseGet(worn::lowest) : worn.lowest();
    }

    /** Of all stretches the thinnest; the first of those that are alike. */
    private Optional<Finding> thinnest() {
        ThinPlace least = null;
        double around = 0;
        for (double degrees : stretches()) {
            Optional<ThinPlace> place = place(degrees);
            if (place.isPresent() && (least == null || place.get().thickness() < least.thickness() - 1e-6)) {
                least = place.get();
                around = degrees;
            }
        }
        if (least == null) {
            return Optional.empty();
        }
        List<String> through = new ArrayList<>(List.of(band.name()));
        through.addAll(keptAt(around, least.across()));
        double out = least.height() - band.finger().innerRadiusMm();
        return Optional.of(finding(through, new RingPlace(around, least.across(), out), least.thickness()));
    }

    /** The middle of each stretch between two ends of arcs, degrees, the top first; the top alone where all goes round. */
    private List<Double> stretches() {
        TreeSet<Double> ends = new TreeSet<>();
        for (Groove groove : grooves) {
            Arc arc = groove.around();
            if (!arc.isFull()) {
                ends.add(turned(arc.centredDegrees() - arc.degrees() / 2));
                ends.add(turned(arc.centredDegrees() + arc.degrees() / 2));
            }
        }
        if (ends.isEmpty()) {
            return List.of(0.0);
        }
        TreeSet<Double> middles = new TreeSet<>();
        double before = ends.last() - 360;
        for (double end : ends) {
            middles.add(turned((before + end) / 2));
            before = end;
        }
        return List.copyOf(middles);
    }

    private static double turned(double degrees) {
        return degrees - 360 * Math.floor(degrees / 360);
    }

    private Optional<ThinPlace> place(double degrees) {
        Ring ring = look.ring();
        double radians = degrees * (StrictMath.PI / 180);
        List<Region> sections =
                parts.stream().map(part -> ring.section(part, radians)).toList();
        Region uncut = Region.of(
                ring.outline(band, radians).translated(0, band.finger().innerRadiusMm()));
        return ThinPlace.of(
                sections,
                uncut,
                grooves.stream().filter(groove -> isAt(groove, degrees)).toList());
    }

    private static boolean isAt(Groove groove, double degrees) {
        Arc arc = groove.around();
        double off = turned(degrees - arc.centredDegrees() + 180) - 180;
        return Math.abs(off) <= arc.degrees() / 2;
    }

    /** Kept parts that lie at a place: what is worn there is they and what they lie in. */
    private List<String> keptAt(double degrees, double across) {
        return grooves.stream()
                .filter(groove -> isAt(groove, degrees))
                .filter(groove -> Math.abs(across - groove.acrossMm()) < groove.widthMm() / 2)
                .flatMap(groove -> groove.keep().stream())
                .map(Groove.Keep::part)
                .toList();
    }

    /** The thickness is no less than that. */
    private Finding lowest() {
        Band.Station lowest = band.stations().get(0);
        for (Band.Station station : band.stations()) {
            lowest = station.section().heightMm() < lowest.section().heightMm() ? station : lowest;
        }
        double left = lowest.section().heightMm();
        if (!band.isEven()) {
            left -= deepest(false) + deepest(true);
        }
        return finding(List.of(band.name()), new RingPlace(lowest.degrees(), 0, left), left);
    }

    private double deepest(boolean inside) {
        return open().stream()
                .filter(groove -> groove.inside() == inside)
                .mapToDouble(groove -> groove.depthMm().orElse(0))
                .max()
                .orElse(0);
    }

    private List<Groove> open() {
        return grooves.stream()
                .filter(groove -> groove.keep().isEmpty() && groove.depthMm().isPresent())
                .toList();
    }

    private Finding finding(List<String> through, RingPlace place, double thickness) {
        return look.on("wear-thickness", through.toArray(String[]::new))
                .saying(through.size() > 1 ? "wear-thickness.together" : "wear-thickness")
                .advising(open().isEmpty() ? "wear-thickness.plain" : "wear-thickness")
                .at(place)
                .measured(Math.max(0, thickness));
    }
}

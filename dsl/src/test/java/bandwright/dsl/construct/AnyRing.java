// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;

import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Arc;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * A ring of the family of {@link HarbourLight} with more of its sizes free.
 *
 * @param stones their number in each line; 0: as many as fit with the base's gap
 * @param across offsets of the stones' lines
 * @param pinsPerGap 0, 1 or 2
 */
record AnyRing(
        HarbourLight base,
        double grooveWidth,
        double grooveDepth,
        double fit,
        double sink,
        Arc around,
        int stones,
        List<Double> across,
        boolean staggered,
        double hole,
        double bearing,
        double clearance,
        int pinsPerGap,
        double pin,
        double pinAcross)
        implements Design {

    static final AnyRing REFERENCE = of(HarbourLight.REFERENCE);

    static AnyRing of(HarbourLight base) {
        return new AnyRing(base, 1.9, 1, 0, 0.25, Arc.FULL, 0, List.of(0.0), false, 0.8, 0.35, 0.01, 2, 0.55, 0.42);
    }

    AnyRing with(HarbourLight other) {
        return new AnyRing(
                other,
                grooveWidth,
                grooveDepth,
                fit,
                sink,
                around,
                stones,
                across,
                staggered,
                hole,
                bearing,
                clearance,
                pinsPerGap,
                pin,
                pinAcross);
    }

    AnyRing around(Arc arc) {
        return new AnyRing(
                base,
                grooveWidth,
                grooveDepth,
                fit,
                sink,
                arc,
                stones,
                across,
                staggered,
                hole,
                bearing,
                clearance,
                pinsPerGap,
                pin,
                pinAcross);
    }

    AnyRing stones(int count) {
        return new AnyRing(
                base,
                grooveWidth,
                grooveDepth,
                fit,
                sink,
                around,
                count,
                across,
                staggered,
                hole,
                bearing,
                clearance,
                pinsPerGap,
                pin,
                pinAcross);
    }

    /** A broad band with many lines of 46 stones, 2 mm apart. */
    static AnyRing lines(int count) {
        HarbourLight base = new HarbourLight(66, 2.0 * count + 2.7, 1.25, 1.9, 1.3, 0.1);
        List<Double> across =
                IntStream.range(0, count).mapToObj(i -> 2.0 * i - (count - 1)).toList();
        return new AnyRing(
                base, 2.0 * count - 0.1, 1, 0, 0.25, Arc.FULL, 46, across, false, 0.8, 0.25, 0.01, 2, 0.55, 0.42);
    }

    AnyRing across(List<Double> lines, boolean shifted) {
        return new AnyRing(
                base,
                grooveWidth,
                grooveDepth,
                fit,
                sink,
                around,
                stones,
                lines,
                shifted,
                hole,
                bearing,
                clearance,
                pinsPerGap,
                pin,
                pinAcross);
    }

    /** A ring that can be made: stones stay within the stripe, the groove within the band, gaps are not negative. */
    static AnyRing random(Random random) {
        double stone = between(random, 1, 2.4);
        double grooveWidth = stone + between(random, 0.2, 1);
        double width = grooveWidth + between(random, 0.8, 4);
        double side = between(random, 0.9, 1.8);
        double height = side + between(random, 0.1, 1);
        double iso = between(random, 41, 76);
        double gap = between(random, 0.05, random.nextInt(3) == 0 ? 12 : 1);
        double hole = stone * between(random, 0.35, 0.7);
        double sink = between(random, 0, 0.4);
        // A seat's cone ends above the finger.
        double bearing = Math.min(between(random, 0.2, 0.6) * (stone - hole), 0.9 * (height - sink));
        HarbourLight base = new HarbourLight(iso, width, side, height, stone, gap);
        return new AnyRing(
                base,
                grooveWidth,
                // Below the side walls' height, so that the flank beside the groove is always there.
                height - side + between(random, 0.2, 0.8) * side,
                random.nextInt(4) == 0 ? between(random, 0.01, 0.05) : 0,
                sink,
                Arc.FULL,
                0,
                List.of(0.0),
                false,
                hole,
                bearing,
                random.nextBoolean() ? 0 : between(random, 0.005, 0.05),
                random.nextInt(3),
                between(random, 0.3, 0.7),
                between(random, 0.15, 0.3) * stone);
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    @Override
    public Optional<String> title() {
        return Optional.empty();
    }

    @Override
    public List<Band> bands() {
        return base.bands();
    }

    @Override
    public List<Groove> grooves() {
        Groove groove = base.grooves().get(0);
        return List.of(new Groove(
                groove.name(),
                groove.place(),
                groove.from(),
                groove.acrossMm(),
                grooveWidth,
                groove.floor(),
                OptionalDouble.of(grooveDepth),
                groove.around(),
                false,
                false,
                false,
                Optional.of(new Groove.Keep("stripe", metal("stripe"), fit)),
                groove.letIn(),
                Optional.empty(),
                List.of()));
    }

    @Override
    public List<StoneRow> stoneRows() {
        StoneRow row = base.stoneRows().get(0);
        return List.of(new StoneRow(
                row.name(),
                row.place(),
                row.part(),
                row.cut(),
                row.material(),
                row.size(),
                row.longAcross(),
                0,
                around,
                stones == 0 ? row.spacing() : new StoneRow.Count(stones),
                sink,
                across,
                staggered,
                false,
                row.girdleShare(),
                row.depthShare()));
    }

    @Override
    public List<Seats> seats() {
        Seats seats = base.seats().get(0);
        return List.of(new Seats(
                seats.name(),
                seats.place(),
                seats.row(),
                seats.from(),
                hole,
                OptionalDouble.of(bearing),
                clearance,
                0,
                false,
                Optional.empty()));
    }

    @Override
    public List<Prongs> prongs() {
        if (pinsPerGap == 0) {
            return List.of();
        }
        Prongs pins = base.prongs().get(0);
        return List.of(new Prongs(
                pins.name(),
                pins.place(),
                pins.row(),
                pins.part(),
                pin,
                pins.riseMm(),
                OptionalDouble.of(bearing),
                OptionalDouble.of(pinAcross),
                OptionalDouble.empty(),
                pinsPerGap,
                OptionalDouble.empty()));
    }

    @Override
    public List<String> parts() {
        return base.parts();
    }

    @Override
    public Metal metal(String part) {
        return base.metal(part);
    }
}

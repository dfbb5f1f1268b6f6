// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

import bandwright.dsl.geometry.operation.Loft;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Point;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.model.Seats;

/**
 * A channel for a row of stones: one slot for each of its lines, that follows the girdles ({@link ChannelProfile}).
 *
 * <ul>
 *   <li>It goes from half a stone before the first to half a stone behind the last (and the clearance), ends square, or all the way round.
 *   <li>Its bottom leaves {@code floor} of metal above the finger, where it leaves least.
 *   <li>With bars it goes down to the finger, except for a bar half-way between the n-th stone and the next, as high as {@code floor}. A bar is 1 mm
 *       wide at its top, or half the way from stone to stone if that is less: common practice, no source.
 * </ul>
 *
 * <p>Where the row is full and alike all round and has no bars, the channel is cut from the cross-section, so volumes are exact. Elsewhere it is carved.
 */
final class ChannelCut {
    private static final double TURN = 2 * StrictMath.PI;

    private static final double STEP = TURN / BodyMaker.FACETS;

    /** How far the tool reaches beyond the outer surface, mm. */
    private static final double BEYOND_MM = 2;

    private static final double BAR_MM = 1;

    /** A bar's side is a step of the bottom over this angle, to both sides: a micrometre. */
    private static final double STEEP = 5e-5;

    /** No section of the slot is nearer than this to a bar's side. */
    private static final double NEAR = 1e-3;

    private final Seats seats;
    private final StoneLayout layout;
    private final List<DoubleFunction<StoneLayout.Place>> lines;
    private final ChannelMetal metal;
    private final Surfaces surfaces;

    /** @param lines for each line of the row the stone that would stand at an angle */
    ChannelCut(
            Seats seats,
            StoneLayout layout,
            List<DoubleFunction<StoneLayout.Place>> lines,
            ChannelMetal metal,
            Surfaces surfaces) {
        this.seats = seats;
        this.layout = layout;
        this.lines = lines;
        this.metal = metal;
        this.surfaces = surfaces;
        new ChannelChecks(seats, layout, lines, metal).check(barArm());
    }

    /** Half the angle that a bar takes; 0 without bars. */
    private double barArm() {
        Seats.Channel channel = seats.channel().orElseThrow();
        double top = metal.innerRadius() + channel.floorMm();
        return channel.barsEvery() == 0 ? 0 : Math.min(BAR_MM / 2 / top, layout.stepRadians() / 4);
    }

    /** A part less its channels; the part itself where they take nothing. */
    PartSection from(PartSection part, Workshop workshop) {
        boolean turned = part.isTurned()
                && layout.full()
                && layout.even()
                && seats.channel().orElseThrow().barsEvery() == 0;
        return turned ? turned(part) : carved(part, workshop);
    }

    private PartSection turned(PartSection part) {
        PartSection rest = part;
        for (StoneLayout.Line line : layout.lines()) {
            Region tool = Region.of(Outline.polygon(polygon(line, 0, false)));
            if (RegionBoolean.intersection(rest.region(), tool).isEmpty()) {
                continue;
            }
            rest = rest.madeBy(new PartSection.Maker(seats.name(), tool, ChannelProfile.FACES))
                    .with(RegionBoolean.difference(rest.region(), tool));
        }
        refuseParting(
                part, part.region().pieces().size(), rest.region().pieces().size());
        return rest;
    }

    private PartSection carved(PartSection part, Workshop workshop) {
        Solid whole = Sections.solid(part, surfaces);
        Solid rest = whole;
        for (int i = 0; i < lines.size(); i++) {
            rest = new Solid.Less(rest, tool(i));
        }
        if (workshop.carved(whole).volumeMm3() - workshop.carved(rest).volumeMm3() < Carved.SPECK_MM3) {
            return part;
        }
        refuseParting(
                part,
                workshop.carved(whole).shells().size(),
                workshop.carved(rest).shells().size());
        return PartSection.carved(part.name(), part.band(), part.metal(), rest);
    }

    private void refuseParting(PartSection part, int before, int after) {
        if (before != after) {
            throw ChannelChecks.parts(seats, part.name(), after);
        }
    }

    private List<Point> polygon(StoneLayout.Line line, double angle, boolean deep) {
        ChannelProfile profile = ChannelProfile.of(seats, layout.row(), line.girdleRadius());
        double upright = Math.max(0.2, line.axisOut());
        double top = (metal.outermost() - line.girdleRadius()) / upright + BEYOND_MM;
        double bottom = deep
                ? -(line.girdleRadius() - metal.innerRadius() / 2) / upright
                : metal.bottom(
                        profile, line, angle, seats.channel().orElseThrow().floorMm());
        return profile.tool(line, bottom, top);
    }

    private Solid.Tool tool(int number) {
        List<StoneLayout.Place> stones =
                layout.places().subList(number * layout.perLine(), (number + 1) * layout.perLine());
        double first = stones.get(0).angle();
        double last = stones.get(stones.size() - 1).angle();
        // Whether the slot is open to the finger from an angle on.
        TreeMap<Double, Boolean> slices = new TreeMap<>();
        boolean deep = seats.channel().orElseThrow().barsEvery() > 0;
        if (layout.full()) {
            for (int i = 0; i < BodyMaker.FACETS; i++) {
                slices.put(first + (i + 0.5) * STEP, deep);
            }
        } else {
            double from = first - end(stones.get(0));
            double to = last + end(stones.get(stones.size() - 1));
            int steps = Math.max(1, (int) Math.ceil((to - from) / STEP - 1e-9));
            for (int i = 0; i <= steps; i++) {
                slices.put(from + i * (to - from) / steps, deep);
            }
        }
        for (double middle : bars(number, first)) {
            double arm = barArm();
            slices.subMap(middle - arm - NEAR, middle - arm + NEAR).clear();
            slices.subMap(middle + arm - NEAR, middle + arm + NEAR).clear();
            slices.subMap(middle - arm, middle + arm).replaceAll((angle, open) -> false);
            slices.put(middle - arm - STEEP, true);
            slices.put(middle - arm + STEEP, false);
            slices.put(middle + arm - STEEP, false);
            slices.put(middle + arm + STEEP, true);
        }
        List<Loft.Section> sections = new ArrayList<>();
        slices.forEach((angle, open) -> {
            StoneLayout.Line line = flat(lines.get(number).apply(angle));
            sections.add(new Loft.Section(angle, polygon(line, angle, open)));
        });
        List<Integer> faces = new ArrayList<>();
        ChannelProfile.FACES.forEach(face -> faces.add(surfaces.number(seats.name(), face)));
        faces.add(surfaces.number(seats.name(), "first end"));
        faces.add(surfaces.number(seats.name(), "last end"));
        return new Solid.Tool(new Loft(sections, layout.full(), faces), Optional.empty());
    }

    /** A place without its lean round the ring, which the channel has by following the surface. */
    static StoneLayout.Line flat(StoneLayout.Place place) {
        StoneLayout.Line line = place.line();
        double size = Math.sqrt(line.axisOut() * line.axisOut() + line.axisAcross() * line.axisAcross());
        return new StoneLayout.Line(
                line.across(), line.girdleRadius(), line.axisOut() / size, line.axisAcross() / size, 0);
    }

    /** How far, as an angle, a slot goes on beyond the middle of its first or last stone. */
    private double end(StoneLayout.Place stone) {
        double half = layout.row().aroundMm() / 2 + seats.clearanceMm();
        return StrictMath.atan(half / stone.line().girdleRadius());
    }

    /** Middles of the bars of a line, after its first stone. */
    private List<Double> bars(int number, double first) {
        int every = seats.channel().orElseThrow().barsEvery();
        List<Double> bars = new ArrayList<>();
        int perLine = layout.gaps().size() / layout.lines().size();
        for (int gap = every - 1; every > 0 && gap < perLine; gap += every) {
            double angle = layout.gaps().get(number * perLine + gap).angle() - first;
            bars.add(first + angle - TURN * Math.floor(angle / TURN));
        }
        return bars;
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.geometry.plane.Outline;
import bandwright.dsl.geometry.plane.Region;
import bandwright.dsl.geometry.plane.RegionBoolean;
import bandwright.dsl.material.StoneCut;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** What can be wrong with a channel where it is cut, looked for at every stone and every gap; where all are alike, once a line. */
record ChannelChecks(
        Seats seats, StoneLayout layout, List<DoubleFunction<StoneLayout.Place>> lines, ChannelMetal metal) {
    private static final double SAME_MM = 1e-9;

    void check(double barArm) {
        refuseFewBars();
        List<Double> angles = new ArrayList<>();
        layout.places().forEach(place -> angles.add(place.angle()));
        layout.gaps().forEach(place -> angles.add(place.angle()));
        for (double angle : layout.even() && metal.parts().stream().allMatch(PartSection::isTurned)
                ? angles.subList(0, Math.min(1, angles.size()))
                : angles) {
            List<Region> tools = new ArrayList<>();
            for (DoubleFunction<StoneLayout.Place> stand : lines) {
                StoneLayout.Line line = ChannelCut.flat(stand.apply(angle));
                ChannelProfile profile = ChannelProfile.of(seats, layout.row(), line.girdleRadius());
                refuseThinLip(profile, line, angle);
                refuseHighFloor(profile, line, angle, barArm);
                tools.add(Region.of(Outline.polygon(
                        profile.tool(line, profile.foot() - 1, metal.outermost() - line.girdleRadius() + 1))));
            }
            refuseMeeting(tools);
        }
    }

    private void refuseFewBars() {
        int every = seats.channel().orElseThrow().barsEvery();
        int gaps = layout.gaps().size() / layout.lines().size();
        if (every > gaps) {
            throw fault("channel-without-bars", Integer.toString(every), Integer.toString(layout.perLine()));
        }
    }

    private void refuseThinLip(ChannelProfile profile, StoneLayout.Line line, double angle) {
        double asked = seats.channel().orElseThrow().lipMm();
        double least = Double.POSITIVE_INFINITY;
        for (double beside : new double[] {profile.half(), profile.reach()}) {
            for (double side : new double[] {beside, -beside}) {
                OptionalDouble surface = metal.surface(line, angle, side);
                if (surface.isEmpty()) {
                    throw fault("channel-without-walls", Lengths.text(2 * profile.reach()));
                }
                least = Math.min(least, surface.getAsDouble() - profile.roof(beside));
            }
        }
        if (least < asked - SAME_MM) {
            // What the lip lacks the stones have to be sunk deeper, rounded up so that it is enough.
            String sink = Lengths.text(Math.ceil(100 * (layout.row().sinkMm() + asked - least) - 100 * SAME_MM) / 100);
            throw least > 0
                    ? fault("lip-too-thin", Lengths.text(least), Lengths.text(asked), sink)
                    : fault("lip-missing", Lengths.text(asked), sink);
        }
    }

    private void refuseHighFloor(ChannelProfile profile, StoneLayout.Line line, double angle, double barArm) {
        double floor = seats.channel().orElseThrow().floorMm();
        double room = -metal.bottom(profile, line, angle, floor);
        double needed = Math.max(-profile.foot(), barArm > 0 ? overBar(floor, barArm) : overFloor());
        if (room < needed - SAME_MM) {
            throw fault(
                    "channel-floor-too-high",
                    Lengths.text(floor),
                    Lengths.text(Math.max(0, room)),
                    Lengths.text(needed));
        }
    }

    /** How far a pavilion goes down; that of a round stone ends in its hole. */
    private double overFloor() {
        StoneRow row = layout.row();
        double pavilion = SeatShape.pavilionMm(row);
        return row.cut() == StoneCut.ROUND ? pavilion * (1 - seats.holeMm() / row.aroundMm()) : pavilion;
    }

    /** How deep a bar must lie to be clear of the pavilions beside it, which are no wider than at their first slope. */
    private double overBar(double floor, double barArm) {
        StoneRow row = layout.row();
        double pitch = layout.pitchMm().orElse(row.aroundMm());
        double bar = 2 * barArm * (metal.innerRadius() + floor);
        return Math.max(0, (row.aroundMm() - pitch + bar) / 2 * row.angles().pavilionSlope());
    }

    private void refuseMeeting(List<Region> tools) {
        for (int i = 0; i < tools.size(); i++) {
            for (int j = i + 1; j < tools.size(); j++) {
                if (!RegionBoolean.intersection(tools.get(i), tools.get(j)).isEmpty()) {
                    throw fault("channels-meet");
                }
            }
        }
    }

    static Fault parts(Seats seats, String part, int pieces) {
        return new Fault(Diagnostic.error("channel-parts-body", seats.place())
                .with(seats.name(), part, Integer.toString(pieces))
                .build());
    }

    private Fault fault(String code, String... numbers) {
        List<String> with = new ArrayList<>(List.of(seats.name()));
        with.addAll(List.of(numbers));
        return new Fault(Diagnostic.error(code, seats.place())
                .with(with.toArray(String[]::new))
                .build());
    }
}

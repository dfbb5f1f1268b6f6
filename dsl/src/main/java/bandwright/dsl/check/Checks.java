// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.OwnLimit;
import bandwright.dsl.model.Seats;
import bandwright.dsl.pattern.AsCast;

/** All checks, in their order. */
public final class Checks {
    private static final List<Check> ALL = List.of(
            new WallChecks(),
            new BandChecks(),
            new DetailChecks(),
            new PieceChecks(),
            new OverlapChecks(),
            new StoneChecks(),
            new StonePlaces(),
            new StoneDepths(),
            new RowChecks(),
            new EdgeChecks(),
            new SeatChecks(),
            new ParcelChecks(),
            new ChannelRules(),
            new PinChecks(),
            new PinPairs(),
            new PinRoots(),
            new LetInChecks(),
            new JointChecks(),
            new MetalCautions(),
            new HallmarkCautions());

    private Checks() {}

    /**
     * All findings about a ring. What cannot be looked at is a finding too. Costs as much as the bodies and their thinnest walls, the first time;
     * both are remembered.
     *
     * @param own the user's limits
     */
    public static Findings of(Ring ring, Workshop workshop, List<OwnLimit> own) {
        return of(ring, workshop, own, true);
    }

    /** As {@link #of}, but for what takes seconds: that is not looked at. For the line under a picture, which is not to wait. */
    public static Findings quick(Ring ring, Workshop workshop, List<OwnLimit> own) {
        return of(ring, workshop, own, false);
    }

    private static Findings of(Ring ring, Workshop workshop, List<OwnLimit> own, boolean thorough) {
        Design design = ring.design();
        Ring pattern = leavesBenchWork(design) ? workshop.ring(AsCast.of(design)) : ring;
        Look look = new Look(ring, pattern, LimitTable.BUILT_IN.with(own), thorough);
        List<Finding> findings = new ArrayList<>();
        for (Check check : ALL) {
            try {
                findings.addAll(check.look(look));
            } catch (Fault fault) {
                findings.add(Look.open(check.key(), fault));
            }
        }
        return new Findings(findings);
    }

    /** Where the ring, or a limit of the user's own, cannot be made. */
    public static Findings notMade(Fault fault) {
        return new Findings(List.of(Look.open("all", fault)));
    }

    private static boolean leavesBenchWork(Design design) {
        return design.grooves().stream().anyMatch(Groove::atBench)
                || design.seats().stream().anyMatch(Seats::atBench);
    }
}

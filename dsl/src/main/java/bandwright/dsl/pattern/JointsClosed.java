// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.pattern;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** A design whose soldered joints leave no clearance: what it has more than the design is the room that solder fills. */
public record JointsClosed(Design open) implements Design {
    @Override
    public List<Groove> grooves() {
        return open.grooves().stream().map(JointsClosed::closed).toList();
    }

    /** Whether a groove leaves room that solder fills. */
    public static boolean isSoldered(Groove groove) {
        return groove.fitMm() > 0 && groove.joint().filter("solder"::equals).isPresent();
    }

    private static Groove closed(Groove groove) {
        return isSoldered(groove)
                ? new Groove(
                        groove.name(),
                        groove.place(),
                        groove.from(),
                        groove.acrossMm(),
                        groove.widthMm(),
                        groove.floor(),
                        groove.depthMm(),
                        groove.around(),
                        groove.roundEnds(),
                        groove.inside(),
                        groove.atBench(),
                        groove.keep().map(keep -> new Groove.Keep(keep.part(), keep.metal(), 0)),
                        groove.letIn(),
                        groove.joint(),
                        groove.leaving())
                : groove;
    }

    @Override
    public Optional<String> title() {
        return open.title();
    }

    @Override
    public List<Band> bands() {
        return open.bands();
    }

    @Override
    public List<StoneRow> stoneRows() {
        return open.stoneRows();
    }

    @Override
    public List<Seats> seats() {
        return open.seats();
    }

    @Override
    public List<Prongs> prongs() {
        return open.prongs();
    }

    @Override
    public List<String> parts() {
        return open.parts();
    }

    @Override
    public Metal metal(String part) {
        return open.metal(part);
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import java.util.ArrayList;
import java.util.List;

import bandwright.dsl.model.Band;
import bandwright.dsl.model.Groove;

/** A groove whose result no plane section tells: cut as a body. */
final class Carving {
    private final Groove groove;
    private final Sections sections;
    private final Workshop workshop;
    private final List<Solid> kept = new ArrayList<>();

    Carving(Groove groove, Sections sections, Workshop workshop) {
        this.groove = groove;
        this.sections = sections;
        this.workshop = workshop;
    }

    void cut() {
        Band band = null;
        for (String name : groove.from()) {
            boolean taken = false;
            for (String piece : sections.piecesOf(name)) {
                PartSection part = sections.find(piece);
                if (part != null) {
                    band = part.band();
                    taken |= cut(part);
                }
            }
            if (!taken) {
                throw GrooveFaults.misses(groove, name);
            }
        }
        if (groove.keep().isPresent() && band != null) {
            Groove.Keep keep = groove.keep().get();
            kept.removeIf(solid -> workshop.carved(solid).volumeMm3() < Carved.SPECK_MM3);
            if (kept.isEmpty()) {
                throw GrooveFaults.leavesNothing(groove, keep.part());
            }
            Solid whole = kept.size() == 1 ? kept.get(0) : new Solid.Joined(kept);
            sections.put(PartSection.carved(keep.part(), band, keep.metal(), whole));
        }
    }

    private boolean cut(PartSection part) {
        GrooveTools tools = sections.tools(groove, part.band());
        Solid body = sections.solid(part);
        Solid rest = new Solid.Less(body, tools.tool());
        Carved whole = workshop.carved(body);
        if (whole.volumeMm3() - workshop.carved(rest).volumeMm3() < Carved.SPECK_MM3) {
            return false;
        }
        if (groove.around().isFull()) {
            Sections.refuseWithoutWalls(groove, part, whole.bounds());
        }
        if (groove.keep().isPresent()) {
            tools.kept().ifPresent(tool -> kept.add(new Solid.Taken(body, tool)));
        }
        leave(part, rest, tools);
        return true;
    }

    private void leave(PartSection part, Solid less, GrooveTools tools) {
        Solid rest = less;
        if (groove.letIn().orElse(null) instanceof Groove.LetInFrom from) {
            Solid.Tool side = tools.side(from.fingertip(), 0);
            Solid collar = new Solid.Taken(rest, tools.side(from.fingertip(), groove.fitMm()));
            if (workshop.carved(collar).volumeMm3() < Carved.SPECK_MM3) {
                throw GrooveFaults.leavesNothing(groove, from.collar());
            }
            sections.put(PartSection.carved(from.collar(), part.band(), part.metal(), collar));
            sections.partOff(part.name(), from.collar());
            rest = new Solid.Less(rest, side);
        }
        int pieces = workshop.carved(rest).shells().size();
        if (pieces == 0) {
            throw GrooveFaults.leavesNothing(groove, part.name());
        }
        if (pieces != Math.max(1, groove.leaving().size())) {
            throw GrooveFaults.partsBody(
                    groove, part.name(), pieces, groove.leaving().size());
        }
        if (groove.leaving().isEmpty()) {
            sections.put(PartSection.carved(part.name(), part.band(), part.metal(), rest));
            return;
        }
        sections.remove(part);
        for (int i = 0; i < pieces; i++) {
            String name = groove.leaving().get(i);
            sections.partOff(part.name(), name);
            sections.put(PartSection.carved(name, part.band(), part.metal(), new Solid.Piece(rest, i)));
        }
    }
}

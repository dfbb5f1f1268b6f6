// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.List;

import bandwright.dsl.model.DerivedDesign;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** A design half made, so that what each kind of work takes or adds can be told apart. */
record Stage(Design whole, Reach reach) implements DerivedDesign {
    /** How far the work has come; each goes beyond the one before. */
    enum Reach {
        BANDS,
        GROOVES,
        SEATS,
        PINS
    }

    private boolean has(Reach work) {
        return reach.compareTo(work) >= 0;
    }

    @Override
    public List<Groove> grooves() {
        return has(Reach.GROOVES) ? whole.grooves() : List.of();
    }

    @Override
    public List<StoneRow> stoneRows() {
        return has(Reach.GROOVES) ? whole.stoneRows() : List.of();
    }

    @Override
    public List<Seats> seats() {
        return has(Reach.SEATS) ? whole.seats() : List.of();
    }

    @Override
    public List<Prongs> prongs() {
        return has(Reach.PINS) ? whole.prongs() : List.of();
    }
}

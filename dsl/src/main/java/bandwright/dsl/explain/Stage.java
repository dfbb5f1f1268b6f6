// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.explain;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** A design half made, so that what each kind of work takes or adds can be told apart. */
record Stage(Design whole, Reach reach) implements Design {
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
    public Optional<String> title() {
        return whole.title();
    }

    @Override
    public List<Band> bands() {
        return whole.bands();
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

    @Override
    public List<String> parts() {
        return whole.parts();
    }

    @Override
    public Metal metal(String part) {
        return whole.metal(part);
    }
}

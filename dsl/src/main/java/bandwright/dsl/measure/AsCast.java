// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.measure;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** A design as it comes from the caster: without what is cut at the bench. */
record AsCast(Design finished) implements Design {
    @Override
    public Optional<String> title() {
        return finished.title();
    }

    @Override
    public List<Band> bands() {
        return finished.bands();
    }

    @Override
    public List<Groove> grooves() {
        return finished.grooves().stream().filter(groove -> !groove.atBench()).toList();
    }

    @Override
    public List<StoneRow> stoneRows() {
        return finished.stoneRows();
    }

    @Override
    public List<Seats> seats() {
        return finished.seats().stream().filter(seats -> !seats.atBench()).toList();
    }

    @Override
    public List<Prongs> prongs() {
        return finished.prongs();
    }

    @Override
    public List<String> parts() {
        return finished.parts();
    }

    @Override
    public Metal metal(String part) {
        return finished.metal(part);
    }
}

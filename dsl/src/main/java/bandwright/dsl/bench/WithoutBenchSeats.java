// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/** A design with all grooves cut, but not yet the seats that the bench drills. */
record WithoutBenchSeats(Design whole) implements Design {
    @Override
    public List<Seats> seats() {
        return whole.seats().stream().filter(seats -> !seats.atBench()).toList();
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
        return whole.grooves();
    }

    @Override
    public List<StoneRow> stoneRows() {
        return whole.stoneRows();
    }

    @Override
    public List<Prongs> prongs() {
        return whole.prongs();
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

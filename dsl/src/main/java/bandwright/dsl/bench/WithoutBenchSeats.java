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
import bandwright.dsl.pattern.AsCast;

/** A design with all grooves cut, but not yet the seats that the bench drills. */
record WithoutBenchSeats(Design whole) implements Design {
    /** Those that are cast: seats in metal that the bench makes are not, whatever is said of them. */
    @Override
    public List<Seats> seats() {
        List<String> cast = AsCast.of(whole).seats().stream().map(Seats::name).toList();
        return whole.seats().stream()
                .filter(seats -> cast.contains(seats.name()))
                .toList();
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

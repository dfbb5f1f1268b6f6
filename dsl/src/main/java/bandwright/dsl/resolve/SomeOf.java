// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Prongs;
import bandwright.dsl.model.Seats;
import bandwright.dsl.model.StoneRow;

/**
 * What one thing of a design depends on, and nothing else: so a definition may use the weight of one band in another one
 * without that being a loop.
 */
record SomeOf(Resolution design, Set<String> names) implements Design {
    private Predicate<String> kept() {
        return names::contains;
    }

    @Override
    public Optional<String> title() {
        return design.title();
    }

    @Override
    public List<Band> bands() {
        return design.bands(kept());
    }

    @Override
    public List<Groove> grooves() {
        return design.grooves(kept());
    }

    @Override
    public List<StoneRow> stoneRows() {
        return design.stoneRows(kept());
    }

    @Override
    public List<Seats> seats() {
        return design.seats(kept());
    }

    @Override
    public List<Prongs> prongs() {
        return design.prongs(kept());
    }

    @Override
    public List<String> parts() {
        // What a groove makes belongs to it, though nobody may have named it.
        return design.parts().stream()
                .filter(part -> names.contains(part)
                        || design.definitions()
                                .find(part)
                                .filter(entry ->
                                        names.contains(entry.made().get(0).name()))
                                .isPresent())
                .toList();
    }

    @Override
    public Metal metal(String part) {
        return design.metal(part);
    }
}

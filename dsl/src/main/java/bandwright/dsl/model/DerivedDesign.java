// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.material.Metal;

/** A design that differs from another in something: what it does not say itself is that one's. */
public interface DerivedDesign extends Design {
    /** The design it is derived from. */
    Design whole();

    @Override
    default Optional<String> title() {
        return whole().title();
    }

    @Override
    default List<Band> bands() {
        return whole().bands();
    }

    @Override
    default List<Groove> grooves() {
        return whole().grooves();
    }

    @Override
    default List<StoneRow> stoneRows() {
        return whole().stoneRows();
    }

    @Override
    default List<Seats> seats() {
        return whole().seats();
    }

    @Override
    default List<Prongs> prongs() {
        return whole().prongs();
    }

    @Override
    default List<String> parts() {
        return whole().parts();
    }

    @Override
    default Metal metal(String part) {
        return whole().metal(part);
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.List;
import java.util.Optional;

import bandwright.dsl.material.Metal;

/**
 * Everything that makes a ring, checked, in an order that does not depend on the order of cells. A thing is worked out when it is first asked for and
 * then kept; asking for one that cannot be made throws the {@link Fault} that says why.
 */
public interface Design {
    Optional<String> title();

    List<Band> bands();

    List<Groove> grooves();

    List<StoneRow> stoneRows();

    List<Seats> seats();

    List<Prongs> prongs();

    /** Names of all parts: bands, what grooves keep, their collars and pieces, in the order in which they are made. */
    List<String> parts();

    /** The metal of a part. */
    Metal metal(String part);
}

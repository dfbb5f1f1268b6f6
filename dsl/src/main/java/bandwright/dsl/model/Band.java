// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.model;

import java.util.List;

import bandwright.dsl.material.Metal;
import bandwright.dsl.source.Place;

/**
 * The body that all else is let into or set on.
 *
 * @param stations cross-sections by place round the ring; one for an even band
 */
public record Band(String name, Place place, Finger finger, List<Station> stations, Metal metal) {
    public Band {
        stations = List.copyOf(stations);
    }

    public record Station(Section section, double degrees) {}

    public boolean isEven() {
        return stations.size() == 1;
    }
}

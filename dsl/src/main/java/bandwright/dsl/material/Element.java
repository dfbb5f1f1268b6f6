// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.List;

/**
 * A chemical element that alloys are made of.
 *
 * @param symbol chemical symbol, {@code Au}
 * @param name the language's word, {@code gold}
 * @param densityGPerCm3 density in g/cm3 near 20 C, as the mixing rule uses it
 * @param meltingC melting point in degrees C, from memory
 * @param sources where the density was read
 * @param note warnings and rival values, or empty text
 */
public record Element(
        String symbol, String name, double densityGPerCm3, double meltingC, List<MaterialSource> sources, String note) {
    public Element {
        sources = List.copyOf(sources);
    }

    @Override
    public String toString() {
        return name;
    }
}

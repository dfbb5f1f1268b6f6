// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.bench.sheet;

import java.util.List;

import bandwright.dsl.view.Table;

/**
 * What a sheet tells of the design beside the ring itself.
 *
 * @param fingerprint of the design: sixteen hexadecimal digits
 * @param requirements each a sentence that says how it came out
 * @param casting the table of {@code show casting}
 * @param sizes the table of {@code show size}
 * @param decisions the table of {@code show decisions}
 */
public record SheetStory(String fingerprint, List<String> requirements, Table casting, Table sizes, Table decisions) {
    public SheetStory {
        requirements = List.copyOf(requirements);
    }
}

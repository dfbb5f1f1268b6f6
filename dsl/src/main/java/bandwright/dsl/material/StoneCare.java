// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a stone material bears of a bench's cleaning, and what else it fears ({@code stone_care.csv}). The grades are those of a trade supplier's chart,
 * which names groups of stones: all garnets, both jades and both opals have that of their group. Stones that were filled, coated or glued bear less.
 *
 * @param ultrasonic the ultrasonic cleaner: safe, usually safe, risky or never
 * @param steam the steam cleaner, graded alike
 * @param also what else it fears, without a full stop; or empty text
 */
public record StoneCare(String ultrasonic, String steam, String also, List<MaterialSource> sources) {
    public StoneCare {
        sources = List.copyOf(sources);
    }

    /** Empty where nothing is on file. */
    public static Optional<StoneCare> of(StoneMaterial material) {
        return Optional.ofNullable(Loaded.BY_NAME.get(material.name()));
    }

    /** Whether it bears both cleaners and fears nothing that is on file. */
    public boolean isHardy() {
        return ultrasonic.endsWith("safe") && steam.endsWith("safe") && also.isEmpty();
    }

    /** The same as half a sentence, with its sources. */
    public String told() {
        String read = sources.stream().map(MaterialSource::text).collect(Collectors.joining(" | "));
        return "ultrasonic cleaner " + ultrasonic + ", steam " + steam + (also.isEmpty() ? "" : "; " + also) + " ["
                + read + "]";
    }

    private static final class Loaded {
        static final Map<String, StoneCare> BY_NAME = new LinkedHashMap<>();

        static {
            for (DataTable.Row row : DataTable.read("stone_care.csv")) {
                BY_NAME.put(
                        row.text("name"),
                        new StoneCare(
                                row.text("ultrasonic"),
                                row.text("steam"),
                                row.text("also"),
                                MaterialSource.of(row.text("source_id"), "published")));
            }
        }
    }
}

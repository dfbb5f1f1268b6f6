// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.material;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A class of small round diamonds: what one sieve plate holds back and the next lets pass. Source: Sieve chart, Diamond
 * Consultants (India), in {@code diamond_sieves.csv}; the groups: Polished Diamond Grading,
 * SRDC India, p. 24, in {@code diamond_sieve_groups.csv}.
 *
 * @param retainedOn the plate they stay on, {@code +6.5}; {@code -0000} for the smallest
 * @param passes the plate they fall through, {@code -7}; empty for the smallest
 * @param carats weight of one stone in carats, as the chart gives it
 * @param lowMm smallest diameter in mm
 * @param highMm largest diameter in mm
 * @param source where it was read
 */
public record DiamondSieve(
        String retainedOn, String passes, double carats, double lowMm, double highMm, MaterialSource source) {
    /** All classes, smallest first. */
    public static List<DiamondSieve> all() {
        return Loaded.ALL;
    }

    /**
     * The classes next to a diameter in mm: the one or two that hold it, or the first or last of the chart if it is
     * beyond. A diameter on the border of two belongs to both.
     */
    public static List<DiamondSieve> nearest(double diameterMm) {
        List<DiamondSieve> holding =
                all().stream().filter(sieve -> sieve.holds(diameterMm)).toList();
        return holding.isEmpty()
                ? all().stream().min(Comparator.comparingDouble(sieve -> sieve.distance(diameterMm))).stream()
                        .toList()
                : holding;
    }

    /** Whether the diameter, in mm, is one of this class. */
    public boolean holds(double diameterMm) {
        return diameterMm >= lowMm && diameterMm <= highMm;
    }

    /** The trade's word for the size: minus two, stars (+2 -6.5), melee (+6.5 -11), pointers (+11). */
    public String group() {
        String group = "";
        for (DiamondSieve sieve : all()) {
            // The groups are told by the plate each starts on; the last start up to here is ours.
            group = Loaded.GROUPS.getOrDefault(sieve.retainedOn, group);
            if (sieve.equals(this)) {
                break;
            }
        }
        return group;
    }

    private double distance(double diameterMm) {
        return Math.max(lowMm - diameterMm, diameterMm - highMm);
    }

    private static final class Loaded {
        static final List<DiamondSieve> ALL = read();
        /** From the plate on which a group starts to its name. */
        static final Map<String, String> GROUPS = DataTable.read("diamond_sieve_groups.csv").stream()
                .collect(Collectors.toUnmodifiableMap(row -> row.text("from"), row -> row.text("group")));

        private static List<DiamondSieve> read() {
            List<DiamondSieve> sieves = new ArrayList<>();
            for (DataTable.Row row : DataTable.read("diamond_sieves.csv")) {
                sieves.add(new DiamondSieve(
                        row.text("retained_on"),
                        row.text("passes"),
                        row.number("carat"),
                        row.number("mm_low"),
                        row.number("mm_high"),
                        MaterialSource.of(row.text("source_id"), row.text("how"))
                                .get(0)));
            }
            return List.copyOf(sieves);
        }
    }
}

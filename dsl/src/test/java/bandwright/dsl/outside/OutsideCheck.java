// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.outside;

import bandwright.dsl.material.OutsideData;

/**
 * One published figure beside ours.
 *
 * @param what what was published, for people
 * @param published the figure as published
 * @param ours what our code gives
 * @param unit of both
 * @param lowest least that ours may lie above the published figure (below, if negative)
 * @param highest most that it may
 * @param source who published it
 * @param remark why the tolerance is what it is, where that is not plain rounding
 */
record OutsideCheck(
        String what,
        double published,
        double ours,
        String unit,
        double lowest,
        double highest,
        String source,
        String remark) {

    static OutsideCheck within(
            String what, double published, double ours, String unit, double tolerance, OutsideData.Row row) {
        return new OutsideCheck(
                what,
                published,
                ours,
                unit,
                -tolerance,
                tolerance,
                source(row),
                row.has("note") ? row.text("note") : "");
    }

    /** For a figure known to differ: the deviation must be there, and no larger than it is known to be. */
    OutsideCheck differingBy(double least, double most, String why) {
        return new OutsideCheck(what, published, ours, unit, least, most, source, why);
    }

    OutsideCheck because(String why) {
        return new OutsideCheck(what, published, ours, unit, lowest, highest, source, why);
    }

    double deviation() {
        return ours - published;
    }

    /** Title and publisher of the first source named; the data file has them all. */
    private static String source(OutsideData.Row row) {
        String first = row.text("source").split(" \\| ", -1)[0];
        String[] parts = first.split("; ", -1);
        return parts.length > 1 ? parts[0] + "; " + parts[1] : first;
    }
}

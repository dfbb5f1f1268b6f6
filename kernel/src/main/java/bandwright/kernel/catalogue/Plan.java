// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import bandwright.dsl.source.SourceText;

/**
 * What a catalogue varies and what it tells of each combination.
 *
 * @param over the handles, at least one
 * @param measures expressions of the language; the headline numbers if there are none
 */
public record Plan(List<Over> over, List<String> measures) {
    /** How messages call the text of a plan. */
    static final String NAME = "the plan";

    public Plan {
        over = List.copyOf(over);
        measures = List.copyOf(measures);
    }

    /** The question that it is, in the language. */
    public SourceText text() {
        // After values with commas a bare name would be one more value, so bare names come first.
        String axes = Stream.concat(
                        over.stream().filter(Over::isOwnRange), over.stream().filter(handle -> !handle.isOwnRange()))
                .map(Over::axis)
                .collect(Collectors.joining(", "));
        String asked = measures.stream().map(measure -> "  " + measure + "\n").collect(Collectors.joining());
        return new SourceText(NAME, "vary " + axes + (measures.isEmpty() ? "" : " {\n" + asked + "}") + "\n");
    }
}

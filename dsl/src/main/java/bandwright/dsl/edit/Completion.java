// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import bandwright.dsl.parse.Expected;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.source.Span;

/**
 * Words that can come next at a place of a text.
 *
 * @param replaced the word being typed, which a proposal takes the place of
 * @param proposals those that begin as the word does, names first; if none does, those that hold it
 */
public record Completion(Span replaced, List<Proposal> proposals) {
    public Completion {
        proposals = List.copyOf(proposals);
    }

    /** @param offset the cursor, in code points */
    public static Completion at(Resolution design, SourceText text, int offset) {
        Expected expected = Expected.at(text, offset);
        String typed = text.text(expected.typed()).toLowerCase(Locale.ROOT);
        Set<Proposal> fitting = new LinkedHashSet<>(new Vocabulary(design, expected).proposals());
        List<Proposal> found = new ArrayList<>(fitting.stream()
                .filter(proposal -> proposal.text().toLowerCase(Locale.ROOT).startsWith(typed))
                .toList());
        if (found.isEmpty()) {
            fitting.stream()
                    .filter(proposal -> proposal.text().toLowerCase(Locale.ROOT).contains(typed))
                    .forEach(found::add);
        }
        found.sort(Comparator.comparing(Proposal::sort).thenComparing(Proposal::text));
        return new Completion(expected.typed(), found);
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import bandwright.dsl.Outcome;
import bandwright.dsl.Workbench;
import bandwright.dsl.source.SourceText;
import bandwright.kernel.notebook.Output;

/** Knows what cells have shown, and which of it no longer holds because what they asked about means something else now. */
final class Staleness {
    /** What changes whenever anything does that an answer may hang on. */
    private static final SourceText WHOLE = new SourceText("", "show fingerprint\nshow options\n");

    /** More than a notebook has; the oldest are no longer watched. */
    private static final int MOST = 200;

    private final Map<String, Shown> shown = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Shown> eldest) {
            return size() > MOST;
        }
    };
    private List<Shown> fresh = List.of();

    /** What a cell has shown, and the fingerprint of what that hung on. */
    record Shown(String cellId, int executionCount, SourceText text, String fingerprint, boolean stale) {}

    void forget(String cellId) {
        shown.remove(cellId);
    }

    /**
     * A cell has run.
     *
     * @param text what the cell asked, as ring text under the cell's name
     * @param silent whether nothing of it was shown
     * @return all that is stale now, in the order in which it was shown
     */
    List<Shown> after(
            Workbench before, Outcome outcome, String cellId, SourceText text, int executionCount, boolean silent) {
        Workbench now = outcome.workbench();
        shown.remove(cellId);
        List<Shown> found = new ArrayList<>();
        if (!before.fingerprintOf(WHOLE).equals(now.fingerprintOf(WHOLE))) {
            shown.replaceAll((id, old) -> judged(old, now, found));
        }
        if (!silent && !outcome.hasErrors()) {
            now.fingerprintOf(text)
                    .ifPresent(print -> shown.put(cellId, new Shown(cellId, executionCount, text, print, false)));
        }
        fresh = found;
        return shown.values().stream().filter(Shown::stale).toList();
    }

    private static Shown judged(Shown old, Workbench now, List<Shown> found) {
        boolean stale = !now.fingerprintOf(old.text()).equals(Optional.of(old.fingerprint()));
        Shown judged = new Shown(old.cellId(), old.executionCount(), old.text(), old.fingerprint(), stale);
        if (stale && !old.stale()) {
            found.add(judged);
        }
        return judged;
    }

    /** What the last cell made stale, in a line; nothing if nothing. */
    Optional<Output> line() {
        if (fresh.isEmpty()) {
            return Optional.empty();
        }
        String cells = fresh.stream().map(one -> one.text().name()).collect(Collectors.joining(", "));
        String sentence = fresh.size() == 1
                ? cells + " shows what no longer holds; run it again\n"
                : cells + " show what no longer holds; run them again\n";
        return Optional.of(new Output.Stream(Output.Channel.STDOUT, sentence));
    }
}

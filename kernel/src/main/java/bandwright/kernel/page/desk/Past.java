// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.page.desk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import bandwright.kernel.notebook.NotebookCell;

/**
 * What was done to a notebook, a step each, to be taken back and done again. A step knows the cells as they were, and of them those alone that
 * it has changed. Typing on in one line of a cell is one step.
 */
final class Past {
    static final int MOST_STEPS = 200;

    /** All steps together; the newest one stays, however large it is. */
    static final int MOST_LETTERS = 400_000;

    /**
     * A notebook's cells at one time.
     *
     * @param silent ids of cells whose results were cleared away
     */
    record Moment(List<NotebookCell> cells, Set<String> silent) {
        Moment {
            cells = List.copyOf(cells);
            silent = Set.copyOf(silent);
        }

        private List<String> order() {
            return cells.stream().map(NotebookCell::id).toList();
        }

        private Map<String, NotebookCell> byId() {
            Map<String, NotebookCell> map = new LinkedHashMap<>();
            cells.forEach(cell -> map.put(cell.id(), cell));
            return map;
        }
    }

    /**
     * The way from one moment to another.
     *
     * @param order of the ids there; nothing if it is the same
     * @param cells that are other there, or not here
     * @param silent there; nothing if it is the same
     */
    record Step(
            @Nullable List<String> order,
            List<NotebookCell> cells,
            @Nullable Set<String> silent) {
        static Step between(Moment from, Moment to) {
            Map<String, NotebookCell> here = from.byId();
            List<NotebookCell> other = to.cells().stream()
                    .filter(cell -> !cell.equals(here.get(cell.id())))
                    .toList();
            return new Step(
                    from.order().equals(to.order()) ? null : to.order(),
                    other,
                    from.silent().equals(to.silent()) ? null : to.silent());
        }

        Moment from(Moment here) {
            Map<String, NotebookCell> known = here.byId();
            cells.forEach(cell -> known.put(cell.id(), cell));
            List<NotebookCell> there = new ArrayList<>();
            for (String id : new LinkedHashSet<>(order == null ? here.order() : order)) {
                NotebookCell cell = known.get(id);
                if (cell != null) {
                    there.add(cell);
                }
            }
            // A notebook has at least one cell, whatever was kept of its past.
            return new Moment(there.isEmpty() ? here.cells() : there, silent == null ? here.silent() : silent);
        }

        private boolean isEmpty() {
            return order == null && cells.isEmpty() && silent == null;
        }

        private long letters() {
            long letters = 40;
            for (NotebookCell cell : cells) {
                letters += 40 + cell.source().length();
                for (String picture : cell.attachments().values()) {
                    letters += picture.length();
                }
            }
            return letters + 12L * ((order == null ? 0 : order.size()) + (silent == null ? 0 : silent.size()));
        }
    }

    private final Deque<Step> back = new ArrayDeque<>();
    private final Deque<Step> again = new ArrayDeque<>();
    private @Nullable String typing;
    private boolean unkept;

    Past() {}

    /** As it was kept. */
    Past(List<Step> back, List<Step> again) {
        this.back.addAll(back);
        this.again.addAll(again);
    }

    /** The newest first. */
    List<Step> back() {
        return List.copyOf(back);
    }

    /** The next first. */
    List<Step> again() {
        return List.copyOf(again);
    }

    /** @param typed the cell that was typed in, if it was no more than that */
    void did(Moment before, Moment after, @Nullable String typed) {
        Step step = Step.between(after, before);
        if (step.isEmpty()) {
            return;
        }
        if (!again.isEmpty()) {
            again.clear();
            unkept = true;
        }
        boolean inOneLine = typed != null && step.order() == null && lines(before, typed) == lines(after, typed);
        if (inOneLine && Objects.equals(typed, typing) && !back.isEmpty()) {
            return;
        }
        typing = typed;
        back.push(step);
        trim();
        unkept = true;
    }

    private static long lines(Moment moment, String id) {
        return moment.cells().stream()
                .filter(cell -> cell.id().equals(id))
                .mapToLong(cell ->
                        cell.source().chars().filter(sign -> sign == '\n').count())
                .sum();
    }

    private void trim() {
        long letters = back.stream().mapToLong(Step::letters).sum();
        while (back.size() > 1 && (back.size() > MOST_STEPS || letters > MOST_LETTERS)) {
            letters -= back.removeLast().letters();
        }
    }

    /** The moment before the last step, which then can be done again; nothing if there is none. */
    Optional<Moment> takeBack(Moment now) {
        return went(back, again, now);
    }

    Optional<Moment> doAgain(Moment now) {
        return went(again, back, now);
    }

    private Optional<Moment> went(Deque<Step> from, Deque<Step> to, Moment now) {
        typing = null;
        while (!from.isEmpty()) {
            Moment there = from.pop().from(now);
            unkept = true;
            Step home = Step.between(there, now);
            if (!home.isEmpty()) {
                to.push(home);
                return Optional.of(there);
            }
        }
        return Optional.empty();
    }

    /** What is typed next is a step of its own. */
    void pause() {
        typing = null;
    }

    /** Whether the steps are others than when this was asked last. */
    boolean changed() {
        boolean changed = unkept;
        unkept = false;
        return changed;
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Fault;

/**
 * What was made already, what cannot be made, and what is being made right now: whoever needs himself to be made is in a
 * loop.
 */
final class Memo {
    /** Deeper than any ring, shallow enough for the machine's stack. */
    private static final int LONGEST_CHAIN = 300;

    private static final String CHAIN_TOO_LONG = "chain-too-long";

    private final Map<String, Object> made = new HashMap<>();
    private final Map<String, Fault> failed = new HashMap<>();
    private final List<String> underWay = new ArrayList<>();
    private final Map<Diagnostic, Set<String>> loops = new HashMap<>();
    private final Set<Diagnostic> told = new LinkedHashSet<>();

    /**
     * Makes a thing, or gives what was made before.
     *
     * @param loop makes the fault for a loop of names, the least name first
     */
    <T> T make(String name, Class<T> type, Function<List<String>, Fault> loop, Supplier<T> maker) {
        Object known = made.get(name);
        if (known != null) {
            return type.cast(known);
        }
        Fault fault = failed.get(name);
        if (fault != null) {
            throw fault;
        } else if (underWay.contains(name)) {
            throw looped(name, loop);
        } else if (underWay.size() >= LONGEST_CHAIN) {
            throw chainTooLong();
        }
        underWay.add(name);
        try {
            T result = maker.get();
            made.put(name, result);
            return result;
        } catch (Fault failure) {
            if (failure.diagnostics().stream().noneMatch(each -> each.code().equals(CHAIN_TOO_LONG))) {
                failed.put(name, failure);
                told.addAll(failure.diagnostics());
            }
            throw failure;
        } catch (StackOverflowError tooDeep) {
            throw chainTooLong();
        } finally {
            underWay.remove(underWay.size() - 1);
        }
    }

    /** What of a fault concerns whoever needed the thing itself: a loop it is a link of, or a chain without end. */
    List<Diagnostic> shared(Fault fault) {
        String current = underWay.isEmpty() ? "" : underWay.get(underWay.size() - 1);
        return fault.diagnostics().stream()
                .filter(each -> each.code().equals(CHAIN_TOO_LONG)
                        || loops.getOrDefault(each, Set.of()).contains(current))
                .toList();
    }

    /** Whether something that was to be made failed for that reason. */
    boolean hasTold(Diagnostic diagnostic) {
        return told.contains(diagnostic);
    }

    private Fault looped(String name, Function<List<String>, Fault> loop) {
        List<String> links = new ArrayList<>(underWay.subList(underWay.indexOf(name), underWay.size()));
        // Whoever was asked first must not show.
        Collections.rotate(links, -links.indexOf(Collections.min(links)));
        Fault fault = loop.apply(links);
        fault.diagnostics().forEach(each -> loops.put(each, Set.copyOf(links)));
        return fault;
    }

    static Fault chainTooLong() {
        return new Fault(Diagnostic.error(CHAIN_TOO_LONG, null)
                .with(Integer.toString(LONGEST_CHAIN))
                .build());
    }
}

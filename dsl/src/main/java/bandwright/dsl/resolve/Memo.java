// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
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

    private final Map<String, Object> made = new HashMap<>();
    private final Map<String, Fault> failed = new HashMap<>();
    private final List<String> underWay = new ArrayList<>();
    private final IdentityHashMap<Fault, Set<String>> loops = new IdentityHashMap<>();
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
            if (failure.diagnostics().stream().noneMatch(each -> each.code().equals("chain-too-long"))) {
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

    /** Whether a fault is a loop that the thing being made now is a link of. */
    boolean isInLoop(Fault fault) {
        Set<String> loop = loops.get(fault);
        return loop != null && !underWay.isEmpty() && loop.contains(underWay.get(underWay.size() - 1));
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
        loops.put(fault, Set.copyOf(links));
        return fault;
    }

    static Fault chainTooLong() {
        return new Fault(Diagnostic.error("chain-too-long", null)
                .with(Integer.toString(LONGEST_CHAIN))
                .build());
    }
}

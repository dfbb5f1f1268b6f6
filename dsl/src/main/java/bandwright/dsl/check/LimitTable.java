// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import bandwright.dsl.material.DataTable;
import bandwright.dsl.model.OwnLimit;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.Unit;
import bandwright.dsl.resolve.KnownLimits;

/** All limits, by key: those of {@code limits.csv}, or the user's own in their place. */
public final class LimitTable implements KnownLimits {
    public static final LimitTable BUILT_IN = new LimitTable(read());

    private final Map<String, Limit> limits;

    private LimitTable(Map<String, Limit> limits) {
        this.limits = limits;
    }

    /** The first row of a key holds; those after it are rivals. */
    private static Map<String, Limit> read() {
        Map<String, Limit> limits = new LinkedHashMap<>();
        for (DataTable.Row row : DataTable.read(LimitTable.class, "limits.csv")) {
            String key = row.text("key");
            Unit unit = row.text("unit").isEmpty()
                    ? Unit.shownFor(Quantity.number(1).dimension())
                    : Unit.parse(row.text("unit")).orElseThrow();
            Quantity value = new Quantity(row.number("value") * unit.factor(), unit.dimension(), unit);
            Limit first = limits.get(key);
            boolean rival = row.text("severity").equals("rival");
            if (rival != (first != null)) {
                throw new IllegalStateException("the first row of a limit holds, the others are rivals: " + key);
            }
            List<Limit.Rival> rivals = new ArrayList<>();
            if (first != null) {
                rivals.addAll(first.rivals());
                rivals.add(new Limit.Rival(value, row.text("source"), row.text("how"), row.text("note")));
            }
            Limit limit = first == null
                    ? new Limit(
                            key,
                            value,
                            Limit.Bound.valueOf(row.text("bound").toUpperCase(Locale.ROOT)),
                            Severity.valueOf(row.text("severity").toUpperCase(Locale.ROOT)),
                            row.text("source"),
                            row.text("how"),
                            row.text("note"),
                            rivals,
                            null)
                    : new Limit(
                            key,
                            first.value(),
                            first.bound(),
                            first.severity(),
                            first.source(),
                            first.how(),
                            first.note(),
                            rivals,
                            null);
            limits.put(key, limit);
        }
        return limits;
    }

    /** The same with the user's own limits in the place of those of their keys. */
    public LimitTable with(List<OwnLimit> own) {
        Map<String, Limit> changed = new LinkedHashMap<>(limits);
        own.forEach(limit -> changed.computeIfPresent(limit.key(), (key, old) -> old.with(limit)));
        return new LimitTable(changed);
    }

    public Limit get(String key) {
        Limit limit = limits.get(key);
        if (limit == null) {
            throw new IllegalArgumentException("no limit is called " + key);
        }
        return limit;
    }

    /** In the order of the file. */
    public Collection<Limit> all() {
        return List.copyOf(limits.values());
    }

    @Override
    public List<String> keys() {
        return limits.keySet().stream().sorted().toList();
    }

    @Override
    public Optional<Unit> unit(String key) {
        return Optional.ofNullable(limits.get(key)).map(limit -> {
            Unit shown = limit.value().shown();
            return shown == null ? Unit.shownFor(limit.value().dimension()) : shown;
        });
    }

    /** {@inheritDoc} Lengths that are at least nothing are distances from one thing to another, which may lie beyond it. */
    @Override
    public boolean mayBeNegative(String key) {
        Limit limit = limits.get(key);
        return limit != null
                && limit.bound() == Limit.Bound.LEAST
                && limit.value().value() == 0
                && limit.value().dimension().equals(Dimension.LENGTH);
    }
}

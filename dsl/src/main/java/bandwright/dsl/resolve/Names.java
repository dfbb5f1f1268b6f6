// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.material.Metal;
import bandwright.dsl.material.StoneMaterial;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Section;
import bandwright.dsl.model.StoneRow;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Name;

/** What a name stands for where one of a kind must stand; the fault of any other is thrown. */
final class Names {
    private final Resolution design;
    private final NameFaults faults;

    Names(Resolution design) {
        this.design = design;
        this.faults = new NameFaults(design.definitions());
    }

    /** The metal a name stands for where one must stand. */
    Metal metal(Name name, SourceText source) {
        Place place = source.place(name.span());
        if (!design.isKnown(name.text())) {
            throw faults.unknownMetal(name.text(), place);
        }
        refuseWithoutValue(name, "a metal", place);
        Value value = design.value(name, source);
        if (value instanceof Value.MetalValue metal) {
            return metal.metal();
        }
        throw wrongKind(value, "a metal", name, source);
    }

    /** The stone material a name stands for where one must stand. */
    StoneMaterial stone(Name name, SourceText source) {
        Place place = source.place(name.span());
        if (!design.isKnown(name.text())) {
            throw faults.unknownStone(name.text(), place);
        }
        refuseWithoutValue(name, "a stone material", place);
        Value value = design.value(name, source);
        if (value instanceof Value.StoneValue stone) {
            return stone.material();
        }
        throw wrongKind(value, "a stone material", name, source);
    }

    /** A part, a profile or a row is no value of any kind; what is wanted is told all the same. */
    private void refuseWithoutValue(Name name, String wanted, Place place) {
        Optional<Kind> kind = design.definitions().kind(name.text());
        if (kind.isPresent() && !Resolution.isValue(kind.get())) {
            throw faults.wrongKind(name.text(), kind.get(), wanted, place);
        }
    }

    private Fault wrongKind(Value value, String wanted, Name name, SourceText source) {
        Place place = source.place(name.span());
        String defined = design.definedAt(name.text())
                .map(at -> ", defined in " + at.source().name() + ", line " + at.line())
                .orElse("");
        return new Fault(Diagnostic.error("wrong-kind", place)
                .with(wanted, value.kind())
                .label(place, value.kind() + defined)
                .build());
    }

    /** The profile a name stands for. */
    Section section(Name name, SourceText source) {
        require(name, source, kind -> kind == Kind.PROFILE, "a profile");
        return design.through(name, source, () -> design.section(name.text()));
    }

    /** The row a name stands for. */
    StoneRow row(Name name, SourceText source) {
        require(name, source, kind -> kind == Kind.STONE_ROW, "a row of stones");
        return design.through(name, source, () -> design.stoneRow(name.text()));
    }

    /** The value of the definition a name stands for. */
    Value definition(Name name, SourceText source) {
        require(name, source, kind -> kind == Kind.DEFINITION, "a definition");
        return design.through(name, source, () -> design.valueOf(name.text()));
    }

    /** The name of a part; what makes the part must itself be sound. */
    String part(Name name, SourceText source) {
        Kind kind = require(name, source, Kind::isPart, "a part");
        return design.through(name, source, () -> {
            if (kind == Kind.BAND) {
                design.band(name.text());
            } else {
                design.groove(design.entry(name.text()).made().get(0).name());
            }
            return name.text();
        });
    }

    private Kind require(Name name, SourceText source, Predicate<Kind> fits, String wanted) {
        Place place = source.place(name.span());
        Optional<Kind> kind = design.definitions().kind(name.text());
        if (name.isRing()) {
            throw new Fault(Diagnostic.error("wrong-kind-of-name", place)
                    .with(Name.RING, "all parts together", wanted)
                    .build());
        } else if (kind.isEmpty()) {
            List<String> known = new ArrayList<>();
            for (Kind each : Kind.values()) {
                known.addAll(fits.test(each) ? design.definitions().names(each) : List.of());
            }
            known.sort(Comparator.naturalOrder());
            throw faults.undefined(name.text(), place, known);
        } else if (!fits.test(kind.get())) {
            throw faults.wrongKind(name.text(), kind.get(), wanted, place);
        }
        return kind.get();
    }
}

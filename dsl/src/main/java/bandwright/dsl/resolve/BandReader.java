// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Finger;
import bandwright.dsl.model.Section;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.quantity.FingerSize;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.SizeSystem;
import bandwright.dsl.resolve.expression.Value;
import bandwright.dsl.source.Place;
import bandwright.dsl.syntax.BandProperty;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.Definition;
import bandwright.dsl.syntax.Expression;

/** A band: finger, profiles by place, metal. */
final class BandReader extends Reader {
    /** No finger is as small, and no number of the other systems as large: a number from here on is a circumference. */
    private static final double LEAST_CIRCUMFERENCE_MM = 40;

    private final Block<BandProperty> block;

    BandReader(Resolution design, Entry entry) {
        super(design, entry);
        this.block = ((bandwright.dsl.syntax.Band) entry.statement()).block();
    }

    Band band() {
        Optional<Finger> finger = finger();
        List<Band.Station> stations = stations();
        Optional<Metal> metal = faults.attempt(() -> design.metal(name()));
        faults.raise();
        return new Band(name(), entry.place(), finger.orElseThrow(), stations, metal.orElseThrow());
    }

    /** The metal alone, which may be known though the rest is not. */
    Metal metal() {
        BandProperty.Metal metal = block.find(BandProperty.Metal.class);
        if (metal == null) {
            missing("metal", "metal yellow-gold-750");
            faults.raise();
            throw new IllegalStateException("a missing metal was not told");
        }
        return names.metal(metal.metal(), source);
    }

    private Optional<Finger> finger() {
        BandProperty.Finger finger = block.find(BandProperty.Finger.class);
        if (finger == null) {
            missing("finger", "finger ISO 54");
            return Optional.empty();
        }
        return faults.attempt(() -> finger(finger));
    }

    /** A number alone is a size of some system, which only its writer knows; the one it looks like is offered. */
    private Diagnostic noSize(Expression size, Value value) {
        Optional<Entry> definition = definition(size);
        Expression said =
                definition.map(of -> ((Definition) of.statement()).value()).orElse(size);
        Place at = definition.map(of -> of.place(said)).orElse(place(size));
        Diagnostic.Builder fault = Diagnostic.error("wrong-kind-of-size", place(size))
                .with("finger", "a finger size", value.kind())
                .label(place(size), definition.isPresent() ? "" : value.kind())
                .expected("a size such as ISO 54, US 7 1/4 or UK N 1/2");
        if (definition.isPresent()) {
            fault.label(at, value.kind());
        }
        if (said.isBareNumber() && value instanceof Value.Amount number) {
            String system = number.quantity().value() < LEAST_CIRCUMFERENCE_MM ? "US " : "ISO ";
            fault.suggest(at, system + at.text())
                    .advice("The system comes first, for one number is another size in each: US, ISO, JP, CH, DE.");
        }
        return fault.build();
    }

    private Finger finger(BandProperty.Finger finger) {
        Value value = design.evaluate(finger.size(), source);
        if (!(value instanceof Value.Size size)) {
            throw new Fault(noSize(finger.size(), value));
        }
        Expression allowance = finger.allowance();
        if (allowance == null) {
            return new Finger(size.size(), size.size());
        }
        double steps = amount("allow", allowance, Dimension.NUMBER, Sign.ANY);
        faults.raise();
        String system = finger.system();
        FingerSize bore = size.size()
                .in(system == null ? size.size().system() : SizeSystem.valueOf(system))
                .plus(steps);
        bore.problem().ifPresent(problem -> {
            throw new Fault(Diagnostic.error("size-refused", place(finger))
                    .with(problem)
                    .build());
        });
        return new Finger(size.size(), bore);
    }

    private List<Band.Station> stations() {
        BandProperty.Profiles profiles = block.find(BandProperty.Profiles.class);
        if (profiles == null) {
            missing("profile", "profile dome");
            return List.of();
        }
        List<Band.Station> stations = new ArrayList<>();
        for (BandProperty.Station station : profiles.stations()) {
            Optional<Section> section = faults.attempt(() -> names.section(station.profile(), source));
            double degrees = degrees(station, profiles.stations().size());
            section.ifPresent(known -> stations.add(new Band.Station(known, degrees)));
            section.filter(known -> known.outline().bounds().minY() < -1e-9)
                    .ifPresent(known -> faults.add(Diagnostic.error("inside-finger", place(station.profile()))
                            .with(
                                    known.name(),
                                    millimetres(-known.outline().bounds().minY()))));
            if (stations.stream().filter(other -> other.degrees() == degrees).count() > 1) {
                faults.add(Diagnostic.error("same-place", place(station))
                        .with(Quantity.degrees(degrees).toString()));
            }
        }
        stations.sort(Comparator.comparingDouble(Band.Station::degrees));
        return stations;
    }

    private double degrees(BandProperty.Station station, int stations) {
        Expression at = station.at();
        if (at != null) {
            return wrapped(amount("at", at, Dimension.ANGLE, Sign.ANY));
        } else if (stations > 1) {
            faults.add(Diagnostic.error("place-wanted", place(station))
                    .with(station.profile().text())
                    .suggest(place(station), station.profile() + " at 180 deg"));
            return Double.NaN;
        }
        return 0;
    }
}

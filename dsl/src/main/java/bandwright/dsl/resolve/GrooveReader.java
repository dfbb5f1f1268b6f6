// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.resolve;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.material.Metal;
import bandwright.dsl.model.Arc;
import bandwright.dsl.model.Groove;
import bandwright.dsl.model.Section;
import bandwright.dsl.quantity.Dimension;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.GrooveProperty;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Property;

/** A groove, and what becomes of the metal. */
final class GrooveReader extends Reader {
    private final bandwright.dsl.syntax.Groove groove;
    private final Block<GrooveProperty> block;

    GrooveReader(Resolution design, Entry entry) {
        super(design, entry);
        this.groove = (bandwright.dsl.syntax.Groove) entry.statement();
        this.block = groove.block();
    }

    Groove groove() {
        List<String> from = parts(groove.from());
        double across = otherwise(block, Property.Word.ACROSS, Sign.ANY, 0);
        Optional<Section> floor = floor();
        double width = width(floor);
        OptionalDouble depth = depth();
        Arc around = around(block.find(Property.Around.class));
        GrooveProperty.Ending ending = block.find(GrooveProperty.Ending.class);
        Property.Made made = block.find(Property.Made.class);
        Optional<Groove.Keep> keep = keep();
        Optional<Groove.LetIn> letIn = letIn();
        faults.raise();
        return new Groove(
                name(),
                entry.place(),
                from,
                across,
                width,
                floor,
                depth,
                around,
                ending != null && ending.round(),
                block.find(GrooveProperty.Inside.class) != null,
                made != null && made.atBench(),
                keep,
                letIn,
                joint(),
                leaving());
    }

    /** The metal of a part that the groove makes. */
    Metal metal(Kind kind) {
        GrooveProperty.Keep keep = block.find(GrooveProperty.Keep.class);
        if (kind == Kind.KEPT_PART && keep != null) {
            return names.metal(keep.metal(), source);
        }
        Name from = groove.from().get(0);
        return design.through(from, source, () -> {
            names.part(from, source);
            return design.metal(from.text());
        });
    }

    private Optional<Section> floor() {
        GrooveProperty.FloorProfile floor = block.find(GrooveProperty.FloorProfile.class);
        return floor == null ? Optional.empty() : faults.attempt(() -> names.section(floor.profile(), source));
    }

    private double width(Optional<Section> floor) {
        GrooveProperty.FloorProfile profile = block.find(GrooveProperty.FloorProfile.class);
        Property.Amount width = block.amount(Property.Word.WIDTH);
        if (profile != null && width != null) {
            oneOnly(profile, width);
        } else if (profile != null) {
            return floor.map(Section::widthMm).orElse(Double.NaN);
        }
        return required(block, Property.Word.WIDTH, Sign.POSITIVE, "width 1.9 mm");
    }

    private OptionalDouble depth() {
        return block.find(GrooveProperty.DepthThrough.class) != null
                ? OptionalDouble.empty()
                : OptionalDouble.of(required(block, Property.Word.DEPTH, Sign.POSITIVE, "depth 1 mm"));
    }

    private Optional<Groove.Keep> keep() {
        GrooveProperty.Keep keep = block.find(GrooveProperty.Keep.class);
        if (keep == null) {
            needsKeep(block.amount(Property.Word.FIT));
            needsKeep(block.find(GrooveProperty.LetIn.class));
            needsKeep(block.find(GrooveProperty.Joined.class));
            return Optional.empty();
        }
        double fit = otherwise(block, Property.Word.FIT, Sign.NOT_NEGATIVE, 0);
        return faults.attempt(() -> names.metal(keep.metal(), source))
                .map(metal -> new Groove.Keep(keep.part().text(), metal, fit));
    }

    private void needsKeep(@Nullable Property property) {
        if (property != null) {
            faults.add(Diagnostic.error("nothing-kept", place(property))
                    .with(property.word())
                    .suggestLine("keep stripe in red-gold-585"));
        }
    }

    private Optional<Groove.LetIn> letIn() {
        GrooveProperty.LetIn letIn = block.find(GrooveProperty.LetIn.class);
        if (letIn instanceof GrooveProperty.LetInFrom from) {
            return Optional.of(
                    new Groove.LetInFrom(from.fingertip(), from.collar().text()));
        } else if (letIn instanceof GrooveProperty.LetInHalves halves) {
            double degrees = wrapped(amount("let-in", halves.at(), Dimension.ANGLE, Sign.ANY));
            return Optional.of(new Groove.LetInHalves(degrees));
        }
        return letIn == null ? Optional.empty() : Optional.of(new Groove.LetInCast());
    }

    private Optional<String> joint() {
        GrooveProperty.Joined joined = block.find(GrooveProperty.Joined.class);
        return Optional.ofNullable(joined).map(by -> by.joint().name().toLowerCase(Locale.ROOT));
    }

    private List<String> leaving() {
        GrooveProperty.Leaving leaving = block.find(GrooveProperty.Leaving.class);
        return leaving == null
                ? List.of()
                : leaving.pieces().stream().map(Name::text).toList();
    }
}

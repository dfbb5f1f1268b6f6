// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.construct.Body;
import bandwright.dsl.construct.PartSection;
import bandwright.dsl.construct.Ring;
import bandwright.dsl.construct.Workshop;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.export.Content;
import bandwright.dsl.export.Plate;
import bandwright.dsl.geometry.solid.Mesh;
import bandwright.dsl.model.Design;
import bandwright.dsl.model.Fault;
import bandwright.dsl.pattern.AllowanceReader;
import bandwright.dsl.pattern.Allowances;
import bandwright.dsl.pattern.AsCast;
import bandwright.dsl.pattern.Shrinkage;
import bandwright.dsl.pattern.WithStock;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.quantity.QuantityFormat;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.ExportProperty;
import bandwright.dsl.syntax.Expression;
import bandwright.dsl.syntax.Name;

/** Parts as solids for a file: which, at which stage of the work, how large, how they lie. */
final class ModelContent {
    /** What printers' plates are packed with, by habit: common practice, no source. */
    private static final Quantity SPACING = Quantity.millimetres(2);

    private static final Quantity MOST_SPACING = Quantity.millimetres(100);

    private final Resolution design;
    private final Workshop workshop;
    private final SourceText source;
    private final @Nullable Block<ExportProperty> block;
    private final AllowanceReader reader;
    private final Allowances allowances;

    ModelContent(Resolution design, Workshop workshop, SourceText source, @Nullable Block<ExportProperty> block) {
        this.design = design;
        this.workshop = workshop;
        this.source = source;
        this.block = block;
        this.reader = new AllowanceReader(design, source, block);
        this.allowances = reader.allowances();
    }

    /** @param whole the finished ring */
    Content.Model of(Ring whole) {
        boolean cast = isCast();
        Design staged = cast ? AsCast.of(whole.design()) : whole.design();
        Ring ring = allowances.hasStock() || cast ? workshop.ring(WithStock.of(staged, allowances)) : whole;
        Set<String> wanted = wanted(ring, cast);
        List<Content.Part> parts = new ArrayList<>();
        for (Body body : ring.bodies()) {
            if (wanted.contains(body.name())) {
                var metal = body.section().metal();
                parts.add(new Content.Part(body.name(), metal.name(), metal.picture(), mesh(body)));
            }
        }
        Plate plate = plate();
        boolean finished = !cast && !allowances.hasStock() && !allowances.shrinks() && !plate.laidOut();
        return new Content.Model(
                design.title().orElse("ring"),
                design.fingerprint(),
                ring,
                parts,
                plate,
                finished,
                words(parts, cast, plate));
    }

    /** Patterns are of what is cast, unless the text says otherwise. */
    private boolean isCast() {
        ExportProperty.Stage stage = find(ExportProperty.Stage.class);
        return stage == null ? allowances.shrinks() || allowances.hasStock() : stage.cast();
    }

    private <T extends ExportProperty> @Nullable T find(Class<T> kind) {
        return block == null ? null : block.find(kind);
    }

    private Set<String> wanted(Ring ring, boolean cast) {
        Set<String> there = ring.sections().stream().map(PartSection::name).collect(Collectors.toSet());
        ExportProperty.Parts said = find(ExportProperty.Parts.class);
        Set<String> wanted = new LinkedHashSet<>();
        for (Name name : said == null ? List.<Name>of() : said.parts()) {
            if (name.isRing()) {
                wanted.addAll(there);
                continue;
            }
            String part = design.partNamed(name, source);
            if (cast && !there.contains(part)) {
                throw new Fault(Diagnostic.error("not-in-pattern", source.place(name.span()))
                        .with(part)
                        .build());
            }
            // A part that a cut has parted is no part any more: this says so.
            wanted.add(ring.section(part).name());
        }
        return said == null ? there : wanted;
    }

    private Mesh mesh(Body body) {
        double bore = body.section().band().finger().innerRadiusMm();
        return allowances.shrinks() ? new Shrinkage(allowances, bore).pattern(body.mesh()) : body.mesh();
    }

    private Plate plate() {
        ExportProperty.LaidOut laid = find(ExportProperty.LaidOut.class);
        if (laid == null) {
            return Plate.ASSEMBLED;
        }
        Expression spacing = laid.spacing();
        Quantity between =
                spacing == null ? SPACING : reader.checked("spacing", spacing, Quantity.millimetres(0), MOST_SPACING);
        return new Plate(true, between.value());
    }

    private List<String> words(List<Content.Part> parts, boolean cast, Plate plate) {
        List<String> words = new ArrayList<>();
        words.add(
                parts.stream().map(part -> part.name() + " in " + part.metal()).collect(Collectors.joining(", ")));
        words.add(cast ? "as cast, without what is cut at the bench" : "as finished");
        if (allowances.hasStock()) {
            words.add("with stock to file, " + mm(allowances.stockOutsideMm()) + " outside and "
                    + mm(allowances.stockInsideMm()) + " inside");
        }
        if (!allowances.shrinks()) {
            words.add("no shrinkage allowed for");
        } else if (allowances.shrinksEvenly()) {
            words.add("enlarged for shrinkage of " + percent(allowances.around()) + ", every length by 1/(1 - "
                    + QuantityFormat.number(allowances.around(), 6) + ")");
        } else {
            words.add("enlarged by 1/(1 - s) for shrinkage s of " + percent(allowances.around()) + " around, "
                    + percent(allowances.across()) + " across, " + percent(allowances.out()) + " out");
        }
        words.add(plate.laidOut() ? "laid out, " + mm(plate.spacingMm()) + " between parts" : "assembled");
        words.add("lengths in mm");
        return words;
    }

    private static String mm(double length) {
        return QuantityFormat.format(Quantity.millimetres(length));
    }

    private static String percent(double share) {
        return QuantityFormat.number(100 * share, 3) + " %";
    }
}

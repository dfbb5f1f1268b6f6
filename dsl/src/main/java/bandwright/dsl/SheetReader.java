// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import bandwright.dsl.bench.sheet.SheetWishes;
import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.export.pdf.Paper;
import bandwright.dsl.material.Metal;
import bandwright.dsl.measure.Spares;
import bandwright.dsl.model.Fault;
import bandwright.dsl.pattern.AllowanceReader;
import bandwright.dsl.quantity.Quantity;
import bandwright.dsl.resolve.Resolution;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.syntax.Block;
import bandwright.dsl.syntax.ExportProperty;
import bandwright.dsl.syntax.Name;
import bandwright.dsl.syntax.Property;

/** Works out what the braces of a {@code sheet} ask for. */
final class SheetReader {
    private static final Quantity MOST_SPARES = Quantity.number(1000);

    private final Resolution design;
    private final SourceText source;
    private final @Nullable Block<ExportProperty> block;
    private final AllowanceReader allowances;

    SheetReader(Resolution design, SourceText source, @Nullable Block<ExportProperty> block) {
        this.design = design;
        this.source = source;
        this.block = block;
        allowances = new AllowanceReader(design, source, block);
    }

    /** @throws Fault if something is not known, of the wrong kind, or beyond sense */
    SheetWishes wishes() {
        return new SheetWishes(paper(), metals(), spares(), allowances.allowances());
    }

    private Quantity spares() {
        Property.Amount said = block == null ? null : block.amount(Property.Word.SPARES);
        Quantity spares = allowances
                .amount(Property.Word.SPARES, Quantity.number(0), MOST_SPARES)
                .orElse(SheetWishes.USUAL_SPARES);
        if (said != null) {
            Spares.check(
                    spares,
                    said.value().isBareNumber(),
                    source.place(said.value().span()));
        }
        return spares;
    }

    AllowanceReader allowances() {
        return allowances;
    }

    private Paper paper() {
        ExportProperty.Paper said = find(ExportProperty.Paper.class);
        if (said == null) {
            return Paper.A4;
        }
        return Paper.find(said.size().text())
                .orElseThrow(() -> new Fault(
                        Diagnostic.error("paper", source.place(said.size().span()))
                                .with(said.size().text())
                                .expected(String.join(" or ", Paper.words()))
                                .build()));
    }

    private List<Metal> metals() {
        ExportProperty.Metals said = find(ExportProperty.Metals.class);
        List<Metal> metals = new ArrayList<>();
        for (Name name : said == null ? List.<Name>of() : said.metals()) {
            metals.add(design.metalNamed(name, source));
        }
        return metals;
    }

    private <T extends ExportProperty> @Nullable T find(Class<T> kind) {
        return block == null ? null : block.find(kind);
    }
}

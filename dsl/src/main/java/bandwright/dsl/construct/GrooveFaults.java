// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.construct;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.model.Band;
import bandwright.dsl.model.Fault;
import bandwright.dsl.model.Groove;

/** What can go wrong when a groove is cut, told with the numbers. */
final class GrooveFaults {
    private GrooveFaults() {}

    static Fault misses(Groove groove, String part) {
        return new Fault(Diagnostic.error("cut-misses-part", groove.place())
                .with(groove.name(), part)
                .build());
    }

    static Fault tooDeep(Groove groove, Band band, double metalMm) {
        return new Fault(Diagnostic.error("cut-too-deep", groove.place())
                .with(groove.name(), Lengths.text(groove.depthMm().orElse(0)), band.name(), Lengths.text(metalMm))
                .build());
    }

    static Fault withoutWalls(Groove groove, String part, double metalMm) {
        return new Fault(Diagnostic.error("cut-without-walls", groove.place())
                .with(groove.name(), Lengths.text(groove.widthMm()), part, Lengths.text(metalMm))
                .build());
    }

    static Fault leavesNothing(Groove groove, String part) {
        return new Fault(Diagnostic.error("cut-leaves-nothing", groove.place())
                .with(groove.name(), part)
                .build());
    }

    static Fault partsBody(Groove groove, String part, int pieces, int names) {
        return new Fault(Diagnostic.error("cut-parts-body", groove.place())
                .with(groove.name(), part, Integer.toString(pieces), Integer.toString(names))
                .build());
    }

    static Fault keptTwice(Groove groove, String other) {
        return new Fault(Diagnostic.error("kept-twice", groove.place())
                .with(groove.name(), other)
                .build());
    }

    static Fault roundEndsTooLong(Groove groove, double lengthMm) {
        return new Fault(Diagnostic.error("round-ends-too-long", groove.place())
                .with(groove.name(), Lengths.text(groove.widthMm()), Lengths.text(lengthMm))
                .build());
    }

    static Fault tooMany(Groove groove, int most) {
        return new Fault(Diagnostic.error("too-many-carved", groove.place())
                .with(groove.name(), Integer.toString(most))
                .build());
    }
}

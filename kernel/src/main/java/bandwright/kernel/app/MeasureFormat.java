// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.app;

import java.util.Locale;

import bandwright.dsl.Report;

/** How {@code measure} writes the numbers. */
enum MeasureFormat {
    TEXT {
        @Override
        String write(Report report) {
            return Summary.text(report);
        }
    },
    JSON {
        @Override
        String write(Report report) {
            return MeasureJson.write(report);
        }
    },
    CSV {
        @Override
        String write(Report report) {
            return MeasureCsv.write(report);
        }
    };

    /** The whole text, ending with a line feed. */
    abstract String write(Report report);

    /** The word on the command line. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}

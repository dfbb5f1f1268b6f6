// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl;

import java.util.List;
import java.util.stream.LongStream;

import org.junit.jupiter.api.Test;

import bandwright.dsl.diagnostic.Diagnostic;
import bandwright.dsl.source.SourceText;
import bandwright.dsl.view.Table;

import static org.assertj.core.api.Assertions.assertThat;

class SweepTest {
    private static final String BAND = """
            finger-size = US 7
            breadth = 4 mm between 3 mm and 6 mm step 1 mm
            alloy = red-gold-585
            profile flat-one = flat(width: breadth, height: 1.8 mm, edge: 0.2 mm)
            band shank { finger finger-size  profile flat-one  metal alloy }
            require weight(shank) <= 6 g
            """;

    private static Swept swept(String plan) {
        return Workbench.empty()
                .define("cell-1", new SourceText("cell 1", BAND))
                .workbench()
                .sweep(new SourceText("the plan", plan));
    }

    private static Sweep sweep(String plan) {
        Sweep sweep = swept(plan).sweep();
        if (sweep == null) {
            throw new IllegalArgumentException(plan);
        }
        return sweep;
    }

    private static List<String> firstCells(Sweep sweep) {
        return LongStream.range(0, sweep.rows())
                .mapToObj(row -> String.join(" ", sweep.place(row)))
                .toList();
    }

    @Test
    void what_changes_no_shape_moves_fastest_and_of_the_rest_what_is_named_last() {
        Sweep sweep = sweep(
                "vary alloy over silver-925, red-gold-585, finger-size over US 6, US 7, breadth over 3 mm, 4 mm { weight(shank) }");

        assertThat(sweep.sharingShapes()).isEqualTo(2);
        assertThat(firstCells(sweep))
                .containsExactly(
                        "silver-925 US 6 3",
                        "red-gold-585 US 6 3",
                        "silver-925 US 6 4",
                        "red-gold-585 US 6 4",
                        "silver-925 US 7 3",
                        "red-gold-585 US 7 3",
                        "silver-925 US 7 4",
                        "red-gold-585 US 7 4");
    }

    @Test
    void a_row_begins_with_its_place_and_is_the_same_in_any_order() {
        Sweep forward = sweep("vary breadth, finger-size over US 6, US 8 { weight(shank), width(shank) }");
        Sweep backward = sweep("vary breadth, finger-size over US 6, US 8 { weight(shank), width(shank) }");
        List<List<String>> rows =
                LongStream.range(0, forward.rows()).mapToObj(forward::row).toList();

        for (long row = backward.rows() - 1; row >= 0; row--) {
            assertThat(backward.row(row)).isEqualTo(rows.get((int) row));
            assertThat(backward.row(row).subList(0, 2)).isEqualTo(backward.place(row));
        }
        assertThat(forward.columns())
                .extracting(Table.Column::heading)
                .containsExactly(
                        "breadth (mm)", "finger-size", "weight(shank) (g)", "width(shank) (mm)", "failed", "reason");
        assertThat(rows.get(rows.size() - 1))
                .as("6 mm wide is too heavy")
                .element(4)
                .isEqualTo("1");
        assertThat(rows.get(0)).as("3 mm wide is not").element(4).isEqualTo("");
    }

    @Test
    void what_is_no_plan_is_told() {
        assertThat(codes("show weights")).containsExactly("no-plan");
        assertThat(codes("vary breadth { weight(shank) }\nvary finger-size over US 6 { weight(shank) }"))
                .containsExactly("no-plan");
        assertThat(codes("vary bredth { weight(shank) }")).containsExactly("not-defined-yet");
        assertThat(codes("vary breadth { weight(shank) + breadth }")).isNotEmpty();
    }

    private static List<String> codes(String plan) {
        return swept(plan).diagnostics().stream().map(Diagnostic::code).toList();
    }
}

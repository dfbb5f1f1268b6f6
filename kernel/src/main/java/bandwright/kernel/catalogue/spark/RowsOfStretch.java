// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue.spark;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.LongStream;

import org.apache.spark.api.java.function.FlatMapFunction;

import bandwright.dsl.Sweep;
import bandwright.kernel.catalogue.DesignText;

/** Works out rows where Spark wants them, one by one as they are written. */
final class RowsOfStretch implements FlatMapFunction<Stretch, List<String>> {
    private static final long serialVersionUID = 1L;
    /** One for all tasks of a machine: they share what they have in common. */
    private static final Map<DesignText, Sweep> MADE = new ConcurrentHashMap<>();

    private final DesignText design;

    RowsOfStretch(DesignText design) {
        this.design = design;
    }

    @Override
    public Iterator<List<String>> call(Stretch stretch) {
        Sweep sweep = MADE.computeIfAbsent(design, DesignText::sweep);
        return LongStream.range(stretch.from(), stretch.end())
                .mapToObj(sweep::row)
                .iterator();
    }
}

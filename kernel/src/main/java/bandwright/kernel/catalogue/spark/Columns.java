// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.MetadataBuilder;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;

import bandwright.dsl.view.Table;

/** What rows of text are in Parquet: numbers with their unit as metadata, or words. An empty cell is null. */
final class Columns implements Serializable {
    private static final long serialVersionUID = 1L;

    private final StructType schema;
    private final boolean[] numbers;

    Columns(List<Table.Column> columns) {
        List<StructField> fields = new ArrayList<>();
        numbers = new boolean[columns.size()];
        for (int i = 0; i < columns.size(); i++) {
            Table.Column column = columns.get(i);
            numbers[i] = column.alignment() == Table.Alignment.RIGHT;
            fields.add(new StructField(
                    column.name(),
                    numbers[i] ? DataTypes.DoubleType : DataTypes.StringType,
                    true,
                    new MetadataBuilder().putString("unit", column.unit()).build()));
        }
        schema = DataTypes.createStructType(fields);
    }

    StructType schema() {
        return schema;
    }

    Row row(List<String> cells) {
        @Nullable Object[] values = new @Nullable Object[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            String cell = cells.get(i);
            values[i] = cell.isEmpty() ? null : numbers[i] ? (Object) Double.valueOf(cell) : cell;
        }
        return RowFactory.create(values);
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue.spark;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.apache.spark.SparkConf;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;

import bandwright.dsl.view.Table;

/** A program that reads rows from Parquet and writes them as lines of CSV, sorted: a second reader, run by Spark. */
public final class ParquetRows {
    private ParquetRows() {}

    /** @param arguments the folder to read and the file to write */
    public static void main(String[] arguments) throws Exception {
        SparkConf conf = new SparkConf().setMaster("local[2]").setAppName("read again");
        List<String> lines = new ArrayList<>();
        try (SparkSession session = SparkSession.builder().config(conf).getOrCreate()) {
            for (Row row : session.read().parquet(arguments[0]).collectAsList()) {
                lines.add(line(row));
            }
        }
        lines.sort(null);
        Files.write(Path.of(arguments[1]), lines, StandardCharsets.UTF_8);
    }

    private static String line(Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.length(); i++) {
            Object value = row.isNullAt(i) ? "" : row.get(i);
            cells.add(
                    value instanceof Double number
                            ? new BigDecimal(number.toString())
                                    .stripTrailingZeros()
                                    .toPlainString()
                            : value.toString());
        }
        return Table.csvLine(cells).stripTrailing();
    }
}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue.spark;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.storage.StorageLevel;

import bandwright.dsl.Sweep;
import bandwright.dsl.view.Table;
import bandwright.kernel.catalogue.CatalogueFault;
import bandwright.kernel.catalogue.DesignText;
import bandwright.kernel.catalogue.Heading;

/**
 * Writes a catalogue as a folder: {@code header.csv} and {@code csv/part-*}, which one after the other are the bytes of the file that
 * one machine writes; {@code parquet/} with the same rows; {@code catalogue.json}, which comes last and says of what.
 */
public final class SparkCatalogue {
    private static final String LAST = "catalogue.json";
    /** Says of what, while it is under way. */
    private static final String FIRST = "begun.json";

    /** Of a partition; a lost one is worked out again. */
    private static final long MOST_ROWS = 50_000;
    /** So that none of the cores waits long for the last. */
    private static final long PARTITIONS_PER_CORE = 4;

    private final DesignText design;
    private final Heading heading;
    private final Sweep sweep;
    private final String out;

    public SparkCatalogue(DesignText design, Heading heading, Sweep sweep, String out) {
        this.design = design;
        this.heading = heading;
        this.sweep = sweep;
        this.out = out;
    }

    /**
     * Works it out on the machines that Spark was started with.
     *
     * @param replace whether an older catalogue in that folder may go; nothing else ever goes
     * @param said hears what is done
     */
    public void write(boolean replace, Consumer<String> said) throws CatalogueFault {
        checkNames();
        SparkConf conf = new SparkConf()
                .setIfMissing("spark.app.name", "bandwright sweep")
                .setIfMissing("spark.master", "local[*]")
                // One slow machine must not hold up all: what it has is given to another one too.
                .setIfMissing("spark.speculation", "true")
                // Checksums and marks beside each file would be one more thing to explain.
                .setIfMissing("spark.hadoop.mapreduce.fileoutputcommitter.marksuccessfuljobs", "false");
        try (SparkSession session = SparkSession.builder().config(conf).getOrCreate()) {
            JavaSparkContext context = new JavaSparkContext(session.sparkContext());
            FileSystem files = FileSystem.get(URI.create(out.replace(" ", "%20")), context.hadoopConfiguration());
            clear(files, replace);
            List<Stretch> stretches = stretches(context.defaultParallelism());
            write(files, FIRST, heading.begun(sweep));
            said.accept(sweep.rows() + " rows in " + stretches.size() + " partitions");
            JavaRDD<List<String>> rows = context.parallelize(stretches, stretches.size())
                    .flatMap(new RowsOfStretch(design))
                    .persist(StorageLevel.DISK_ONLY());
            rows.map(SparkCatalogue::line).saveAsTextFile(out + "/csv");
            Columns columns = new Columns(sweep.columns());
            session.createDataFrame(rows.map(columns::row), columns.schema())
                    .write()
                    .parquet(out + "/parquet");
            write(files, "header.csv", header());
            write(files, LAST, heading.begun(sweep));
            files.delete(new Path(out, FIRST), false);
        } catch (IOException failure) {
            throw new CatalogueFault(out + " cannot be written: " + failure.getMessage());
        } catch (CatalogueFault fault) {
            throw fault;
        } catch (Exception failure) {
            // Scala declares no exceptions: any can come from Spark.
            throw new CatalogueFault("Spark gave up, and its own log says more: " + failure.getMessage());
        }
    }

    private static String line(List<String> cells) {
        String line = Table.csvLine(cells);
        return line.substring(0, line.length() - 1);
    }

    private byte[] header() {
        return Table.csvLine(sweep.columns().stream().map(Table.Column::heading).toList())
                .getBytes(StandardCharsets.UTF_8);
    }

    private void checkNames() throws CatalogueFault {
        Set<String> names = new HashSet<>();
        for (Table.Column column : sweep.columns()) {
            if (!names.add(column.name())) {
                throw new CatalogueFault(
                        "two columns are called " + column.name() + "; in Parquet each has a name of its own");
            }
        }
    }

    /** Runs of rows whose ends do not part what shares its shapes, where that is possible. */
    private List<Stretch> stretches(int cores) {
        long sharing = Math.min(sweep.sharingShapes(), MOST_ROWS);
        long wanted = Math.max(sweep.rows() / MOST_ROWS + 1, PARTITIONS_PER_CORE * cores);
        long length = Math.max(1, sweep.rows() / wanted / sharing) * sharing;
        List<Stretch> stretches = new ArrayList<>();
        for (long from = 0; from < sweep.rows(); from += length) {
            stretches.add(new Stretch(from, Math.min(sweep.rows(), from + length)));
        }
        return stretches;
    }

    private void clear(FileSystem files, boolean replace) throws IOException, CatalogueFault {
        Path folder = new Path(out);
        if (!files.exists(folder) || files.listStatus(folder).length == 0) {
            return;
        } else if (!replace) {
            throw new CatalogueFault(out + " is there already; say --replace if the catalogue in it may go");
        }
        if (!isOurs(files, new Path(folder, LAST)) && !isOurs(files, new Path(folder, FIRST))) {
            throw new CatalogueFault(out + " holds something that is no catalogue; take another folder");
        }
        for (String name : List.of("csv", "parquet", "header.csv", LAST, FIRST)) {
            files.delete(new Path(folder, name), true);
        }
    }

    private static boolean isOurs(FileSystem files, Path side) throws IOException {
        if (!files.exists(side)) {
            return false;
        }
        try (InputStream stream = files.open(side)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).contains("\"text_sha256\"");
        }
    }

    private void write(FileSystem files, String name, byte[] bytes) throws IOException {
        try (OutputStream stream = files.create(new Path(out, name), true)) {
            stream.write(bytes);
        }
    }
}

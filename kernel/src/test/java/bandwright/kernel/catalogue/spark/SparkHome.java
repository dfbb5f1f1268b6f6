// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.catalogue.spark;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import bandwright.kernel.page.Npm;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

/** Spark as its own download has it, a folder of jars, made from what Maven has; and its processes, on this machine alone. */
final class SparkHome implements AutoCloseable {
    /** What Spark's own scripts open for it in Java 17. */
    private static final List<String> OPENED = List.of(
            "java.base/java.lang",
            "java.base/java.lang.invoke",
            "java.base/java.lang.reflect",
            "java.base/java.io",
            "java.base/java.net",
            "java.base/java.nio",
            "java.base/java.util",
            "java.base/java.util.concurrent",
            "java.base/java.util.concurrent.atomic",
            "java.base/sun.nio.ch",
            "java.base/sun.nio.cs",
            "java.base/sun.security.action",
            "java.base/sun.util.calendar");

    private final Path home;
    /** For what its processes write. */
    private final Path folder;

    private final List<Process> processes = new ArrayList<>();
    private final int port;
    private int told;

    private SparkHome(Path home, Path folder, int port) {
        this.home = home;
        this.folder = folder;
        this.port = port;
    }

    /** Skips the test where Maven or its network is missing. */
    static SparkHome in(Path folder) throws IOException, InterruptedException {
        Path list = Path.of("target", "spark.classpath").toAbsolutePath();
        if (!Files.exists(list)) {
            String said = Npm.run(List.of(
                    "mvn",
                    "-q",
                    "-B",
                    "-f",
                    Path.of("src", "test", "spark", "pom.xml").toString(),
                    "dependency:build-classpath",
                    "-Dmdep.outputFile=" + list));
            assumeTrue(Files.exists(list), "Maven brings no Spark: " + said);
        }
        Path home = Path.of("target", "spark").toAbsolutePath();
        Path jars = Files.createDirectories(home.resolve("jars"));
        for (String jar : Files.readString(list).strip().split(Pattern.quote(File.pathSeparator), -1)) {
            Path link = jars.resolve(Path.of(jar).getFileName());
            if (!Files.exists(link)) {
                Files.createSymbolicLink(link, Path.of(jar));
            }
        }
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return new SparkHome(home, folder, free.getLocalPort());
        }
    }

    String master() {
        return "spark://127.0.0.1:" + port;
    }

    Process startMaster() throws IOException {
        return start(
                "org.apache.spark.deploy.master.Master",
                "--host",
                "127.0.0.1",
                "--port",
                Integer.toString(port),
                "--webui-port",
                "0");
    }

    Process startWorker(String name) throws IOException {
        return start(
                "org.apache.spark.deploy.worker.Worker",
                "--host",
                "127.0.0.1",
                "--webui-port",
                "0",
                "--cores",
                "1",
                "--memory",
                "1g",
                "--work-dir",
                folder.resolve(name).toString(),
                master());
    }

    /** As spark-submit does. */
    Process submit(List<String> words) throws IOException {
        List<String> all = new ArrayList<>(List.of(
                "org.apache.spark.deploy.SparkSubmit",
                "--conf",
                "spark.driver.host=127.0.0.1",
                "--conf",
                "spark.ui.enabled=false",
                "--conf",
                "spark.executor.memory=512m"));
        all.addAll(words);
        return start(all.toArray(new String[0]));
    }

    private Process start(String... words) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-Xmx512m");
        OPENED.forEach(opened -> command.add("--add-opens=" + opened + "=ALL-UNNAMED"));
        command.addAll(List.of("-cp", home.resolve("jars") + File.separator + "*"));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("told-" + told++ + ".txt").toFile());
        builder.environment().put("SPARK_HOME", home.toString());
        builder.environment().put("SPARK_SCALA_VERSION", "2.12");
        builder.environment().put("SPARK_LOCAL_IP", "127.0.0.1");
        Process process = builder.start();
        processes.add(process);
        return process;
    }

    /** What the last started process has said. */
    String said() throws IOException {
        return Files.readString(folder.resolve("told-" + (told - 1) + ".txt"));
    }

    /** Ends all that was started, and what those have started. */
    @Override
    public void close() {
        for (Process process : processes) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }
}

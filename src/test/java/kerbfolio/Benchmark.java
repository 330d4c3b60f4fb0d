package kerbfolio;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import kerbfolio.cli.Kerbfolio;

/**
 * Measures, and judges nothing: how long one cold {@code issue} of the estate car takes and how much memory, started
 * plainly and with the launcher; then how many jobs one running program issues a second. Needs a packaged jar; run by
 * {@code mvn -B -Pbenchmark verify}, on a machine that does nothing else.
 */
final class Benchmark {
    private static final int COLD_RUNS = 9;
    private static final int JOBS = 200;
    private static final double NANOS = 1e9;
    private static final double KILO = 1024;
    private static final List<String> SAMPLES = List.of("first", "estate", "pickup");

    private Benchmark() {}

    public static void main(String[] arguments) throws Exception {
        Path out = Files.createTempDirectory("kerbfolio-benchmark");
        try {
            if (arguments.length > 0) {
                warm(out);
            } else {
                Path target = Path.of("target");
                cold(
                        "java -jar",
                        List.of(java(), "-jar", target.resolve("kerbfolio.jar").toString()),
                        out);
                cold("launcher", List.of(target.resolve("kerbfolio").toString()), out);
                child();
            }
        } finally {
            delete(out);
        }
    }

    /** Issues many jobs in a program of its own, whose own lines nobody reads. */
    private static void child() throws Exception {
        new ProcessBuilder(
                        java(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "kerbfolio.Benchmark",
                        "warm")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start()
                .waitFor();
    }

    private static void cold(String name, List<String> start, Path out) throws Exception {
        var seconds = new ArrayList<Double>();
        long peak = 0;
        for (int run = 0; run < COLD_RUNS; run++) {
            var command = new ArrayList<>(start);
            command.addAll(List.of(
                    "issue",
                    "sample-jobs/estate.yaml",
                    "--out",
                    out.resolve("cold-" + run).toString()));
            long begun = System.nanoTime();
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            while (process.isAlive()) {
                peak = Math.max(peak, peakMemory(String.valueOf(process.pid())));
                process.waitFor(5, TimeUnit.MILLISECONDS);
            }
            seconds.add((System.nanoTime() - begun) / NANOS);
            if (process.exitValue() > 1) {
                throw new IllegalStateException(command + " ended with " + process.exitValue());
            }
            delete(out.resolve("cold-" + run));
        }
        seconds.sort(Comparator.naturalOrder());
        say(
                "%-10s cold issue of the estate car: least %.2f s, median %.2f s of %d; memory %.0f MB",
                name, seconds.get(0), seconds.get(COLD_RUNS / 2), COLD_RUNS, peak / KILO);
    }

    private static void warm(Path out) throws IOException {
        double first = 0;
        long begun = System.nanoTime();
        for (int job = 0; job < JOBS; job++) {
            Path folder = out.resolve("warm-" + job);
            String sample = "sample-jobs/" + SAMPLES.get(job % SAMPLES.size()) + ".yaml";
            if (Kerbfolio.run("issue", sample, "--out", folder.toString()) > 1) {
                throw new IllegalStateException(sample + " was not issued");
            }
            delete(folder);
            first = job == 0 ? (System.nanoTime() - begun) / NANOS : first;
        }
        double all = (System.nanoTime() - begun) / NANOS;
        say(
                "one program, %d jobs: first %.2f s, then %.0f ms each; memory %.0f MB",
                JOBS, first, (all - first) / (JOBS - 1) * 1000, peakMemory("self") / KILO);
    }

    /** Largest resident memory of a process so far [kB], where the system tells it. */
    private static long peakMemory(String process) {
        try (Stream<String> lines = Files.lines(Path.of("/proc", process, "status"))) {
            return lines.filter(line -> line.startsWith("VmHWM"))
                    .map(line -> line.replaceAll("\\D", ""))
                    .mapToLong(Long::parseLong)
                    .findFirst()
                    .orElse(0);
        } catch (IOException | UncheckedIOException gone) {
            return 0;
        }
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static void say(String format, Object... figures) {
        System.err.println(String.format(Locale.ROOT, format, figures));
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path path : walk.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}

package kerbfolio;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** A program run in a Java of its own. */
public final class Child {
    private final List<String> command = new ArrayList<>();

    private Child() {}

    /** What a child came to. */
    public record Outcome(int exitCode, String out) {}

    /** A child in the same Java as this one. */
    public static Child java(String... options) {
        return java(Path.of(System.getProperty("java.home")), options);
    }

    /** A child in the Java at that place. */
    public static Child java(Path home, String... options) {
        var child = new Child();
        child.command.add(home.resolve("bin/java").toString());
        child.command.add("-XX:TieredStopAtLevel=1");
        child.command.addAll(List.of(options));
        child.command.addAll(List.of("-cp", classPath()));
        return child;
    }

    /** The same child, started by a line of shell in which {@code "$@"} is its command. */
    public Child within(String... prefix) {
        command.addAll(0, List.of(prefix));
        return this;
    }

    /** Begins a main class, both outputs in one. */
    public Process start(Class<?> main, String... arguments) throws IOException {
        command.add(main.getName());
        command.addAll(List.of(arguments));
        var builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("LC_ALL", "C");
        return builder.start();
    }

    /** Runs a main class to its end. */
    public Outcome run(Class<?> main, String... arguments) throws IOException, InterruptedException {
        Process process = start(main, arguments);
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        return new Outcome(process.waitFor(), out);
    }

    /** Whether a command of the machine's own is there and ends well. */
    public static boolean succeeds(String... command) {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException noSuchProgram) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static String classPath() {
        return Child.class.getClassLoader() instanceof URLClassLoader loader
                ? Arrays.stream(loader.getURLs())
                        .map(url -> Path.of(URI.create(url.toString())).toString())
                        .collect(Collectors.joining(File.pathSeparator))
                : System.getProperty("java.class.path");
    }
}

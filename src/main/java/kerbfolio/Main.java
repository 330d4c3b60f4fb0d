package kerbfolio;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.Locale;
import java.util.TimeZone;
import kerbfolio.cli.Kerbfolio;

/** Arguments in, exit code out. */
public final class Main {
    private Main() {}

    /** Runs one command and ends the program with its exit code. */
    public static void main(String[] arguments) {
        settle();
        System.exit(Kerbfolio.run(arguments));
    }

    /** The same output on every machine: no local number formats, no local time, no screen. */
    static void settle() {
        Locale.setDefault(Locale.ROOT);
        TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
        System.setProperty("java.awt.headless", "true");
        System.setOut(new PrintStream(OutputStream.nullOutputStream(), true, UTF_8)); // for libraries that talk
    }
}

package kerbfolio.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** A command typed, with what came back. */
record Typed(int exitCode, String out, String err) {
    static Typed of(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exitCode = Kerbfolio.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
        return new Typed(
                exitCode, out.toString().replace("\r\n", "\n"), err.toString().replace("\r\n", "\n"));
    }

    /** What was said on the error stream in one plain sentence: no trace of the program's inside. */
    String sentence() {
        if (err.lines().count() != 1 || err.contains("kerbfolio.") || err.contains("Exception")) {
            throw new AssertionError("no sentence: " + err);
        }
        return err.strip();
    }
}

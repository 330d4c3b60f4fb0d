package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Properties;
import kerbfolio.pdf.TemplateComplaint;
import kerbfolio.reading.Complaints;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;

/** The program with its commands. */
@Command(
        name = "kerbfolio",
        description =
                "Reads a finished conversion job, reruns every engineering check and writes the handover dossier.",
        subcommands = {Issue.class, CheckJob.class, Prove.class, New.class, Explain.class},
        mixinStandardHelpOptions = true,
        versionProvider = Kerbfolio.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:nothing holds any gate; a record holds",
            "1:written, and some gate is held or not examined; a record does not hold",
            "2:job file, template, dossier or command is wrong; nothing is written",
            "3:something could not be read or written"
        })
public final class Kerbfolio {
    static final int FREE = 0;
    static final int HELD = 1;
    static final int WRONG = 2;
    static final int UNWRITTEN = 3;

    private Kerbfolio() {}

    /** Runs one command and returns its exit code. */
    public static int run(String... arguments) {
        // What is printed holds ± and ², whatever the machine takes a text to be written in.
        var out = new PrintWriter(new FileOutputStream(FileDescriptor.out), true, UTF_8);
        var err = new PrintWriter(new FileOutputStream(FileDescriptor.err), true, UTF_8);
        try {
            return commandLine().setOut(out).setErr(err).execute(arguments);
        } catch (OutOfMemoryError | StackOverflowError e) {
            err.println("This machine gave the program too little memory; nothing was written.");
            return UNWRITTEN;
        } finally {
            out.flush();
            err.flush();
        }
    }

    static CommandLine commandLine() {
        return new CommandLine(new Kerbfolio())
                .setUsageHelpAutoWidth(true)
                .setExitCodeExceptionMapper(failure -> failure instanceof Complaints
                                || failure instanceof TemplateComplaint
                                || failure instanceof ParameterException
                        ? WRONG
                        : UNWRITTEN)
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    PrintWriter err = command.getErr();
                    if (failure instanceof Complaints complaints) {
                        complaints.list().forEach(err::println);
                        err.println(
                                complaints.list().size() == 1
                                        ? "1 complaint; nothing was written."
                                        : complaints.list().size() + " complaints; nothing was written.");
                        return WRONG;
                    }
                    if (failure instanceof TemplateComplaint) {
                        err.println(failure.getMessage());
                        err.println("The templates are wrong; nothing was written.");
                        return WRONG;
                    }
                    if (failure instanceof IOException io) {
                        err.println(reason(io));
                        return UNWRITTEN;
                    }
                    // Whatever else went wrong is said in one line: a stack trace helps nobody in a workshop.
                    err.println(failure.getMessage() == null ? failure.toString() : failure.getMessage());
                    return UNWRITTEN;
                });
    }

    private static String reason(IOException failure) {
        if (failure instanceof NoSuchFileException missing) {
            return "There is no file " + missing.getFile();
        }
        if (failure instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be read or written";
        }
        if (failure instanceof FileSystemException file && file.getReason() != null) {
            return file.getFile() + ": " + file.getReason();
        }
        if (failure instanceof FileAlreadyExistsException present) {
            return present.getFile() + " exists already and was left alone";
        }
        return "Could not read or write: " + failure.getMessage();
    }

    /** Name and version, as it stands in every footer. */
    static String program() {
        return "Kerbfolio " + version();
    }

    private static String version() {
        try (InputStream in = Kerbfolio.class.getResourceAsStream("/kerbfolio/version.properties")) {
            var properties = new Properties();
            properties.load(in);
            return properties.getProperty("version", "unversioned");
        } catch (IOException e) {
            return "unversioned";
        }
    }

    /** What {@code --version} prints. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {program()};
        }
    }
}

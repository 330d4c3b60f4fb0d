package kerbfolio.cli;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a commented job file of the first tier, to be filled in. */
@Command(
        name = "new",
        description = "Writes a commented starter job of the first tier.",
        mixinStandardHelpOptions = true)
final class New implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "where to write it; an existing file is left alone")
    private Path file = Path.of("");

    @Option(names = "--number", paramLabel = "N", description = "job number (default: ${DEFAULT-VALUE})")
    private String number = "0001";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws Exception {
        if (!number.matches("[A-Za-z0-9]([A-Za-z0-9._-]{0,38}[A-Za-z0-9])?")) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--number takes at most 40 of A-Z a-z 0-9 - _ . and begins and ends with a letter or digit");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw new FileSystemException(folder.toString(), null, "there is no such folder");
        }
        try (InputStream in = Objects.requireNonNull(New.class.getResourceAsStream("/kerbfolio/starter.yaml"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("@number@", number)
                    .replace("@date@", LocalDate.now(ZoneId.systemDefault()).toString());
            Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
        }
        spec.commandLine().getOut().println("Wrote " + file + ". Fill it in, then: kerbfolio check " + file);
        return Kerbfolio.FREE;
    }
}

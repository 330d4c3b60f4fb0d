package kerbfolio.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import kerbfolio.fingerprint.Issued;
import kerbfolio.fingerprint.Making;
import kerbfolio.job.Identity;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the dossier of a job: PDF, workbook, findings and fingerprint. */
@Command(
        name = "issue",
        description = "Reruns every check and writes the dossier: PDF, workbook, findings.",
        mixinStandardHelpOptions = true)
final class Issue implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "the job file, YAML or JSON")
    private Path job = Path.of("");

    @Option(names = "--out", paramLabel = "DIR", description = "folder of dossiers (default: ${DEFAULT-VALUE})")
    private Path out = Path.of("dossiers");

    @Option(names = "--templates", paramLabel = "DIR", description = "a folder with templates of the shop's own")
    private @Nullable Path templates;

    @Option(names = "--replace", description = "write over a revision that was issued before with other content")
    private boolean replace;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws Exception {
        if (templates != null && !Files.isDirectory(templates)) {
            throw new ParameterException(spec.commandLine(), "--templates: there is no folder " + templates);
        }
        Rerun rerun = Rerun.of(job, new Making(Kerbfolio.program(), templates));
        Issued issued = rerun.issued();
        Identity id = rerun.file().job().job();
        Path folder = out.resolve(id.number() + "-" + id.revision());
        boolean written = new IssuedFolder(folder).write(issued.files(), replace);
        issued.complaints().forEach(spec.commandLine().getErr()::println);
        var terminal = spec.commandLine().getOut();
        terminal.print(Terminal.gates(rerun.release().gates()));
        terminal.println(
                written
                        ? "Wrote " + folder + ", fingerprint " + issued.record().fingerprint()
                        : folder + " holds exactly this already; nothing was written");
        terminal.flush();
        return rerun.exitCode();
    }
}

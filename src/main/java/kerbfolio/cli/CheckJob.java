package kerbfolio.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the findings and the gates, and writes nothing. */
@Command(
        name = "check",
        description = "Reruns every check and prints findings and gates; writes nothing.",
        mixinStandardHelpOptions = true)
final class CheckJob implements Callable<Integer> {
    @Parameters(paramLabel = "JOB", description = "the job file, YAML or JSON")
    private Path job = Path.of("");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws Exception {
        Rerun rerun = Rerun.of(job);
        spec.commandLine().getOut().print(Terminal.findings(rerun.dossier().workings()));
        spec.commandLine().getOut().print(Terminal.gates(rerun.release().gates()));
        spec.commandLine().getOut().flush();
        return rerun.exitCode();
    }
}

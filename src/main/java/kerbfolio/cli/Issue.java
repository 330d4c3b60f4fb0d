package kerbfolio.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import kerbfolio.dossier.FindingsFile;
import kerbfolio.job.Identity;
import kerbfolio.pdf.DossierPdf;
import kerbfolio.reading.JsonWriter;
import kerbfolio.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the dossier of a job: PDF, workbook and findings. */
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
        Rerun rerun = Rerun.of(job);
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(
                "dossier.pdf",
                DossierPdf.write(rerun.dossier(), rerun.file(), templates).content());
        files.put("dossier.xlsx", Workbook.write(rerun.dossier()));
        files.put("findings.json", JsonWriter.write(FindingsFile.of(rerun.release())));
        Identity id = rerun.file().job().job();
        Path folder = out.resolve(id.number() + "-" + id.revision());
        boolean written = IssuedFolder.write(folder, files, replace);
        var terminal = spec.commandLine().getOut();
        terminal.print(Terminal.gates(rerun.release().gates()));
        terminal.println(written ? "Wrote " + folder : folder + " holds exactly this already; nothing was written");
        terminal.flush();
        return rerun.exitCode();
    }
}

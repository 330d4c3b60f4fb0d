package kerbfolio.cli;

import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import kerbfolio.fingerprint.Answer;
import kerbfolio.fingerprint.Making;
import kerbfolio.fingerprint.Proof;
import kerbfolio.fingerprint.Prover;
import kerbfolio.pdf.PdfFile;
import kerbfolio.pdf.UnreadablePdf;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether the record in a dossier's PDF holds. */
@Command(
        name = "prove",
        description = "Reruns the job inside a dossier and says whether its record holds.",
        mixinStandardHelpOptions = true)
final class Prove implements Callable<Integer> {
    @Parameters(paramLabel = "PDF", description = "the dossier.pdf of a dossier")
    private Path pdf = Path.of("");

    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "the templates of the shop's own it was issued with")
    private @Nullable Path templates;

    @Option(
            names = "--job",
            paramLabel = "FILE",
            description = "a job file to be compared with the record, with what lies beside it")
    private @Nullable Path job;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws Exception {
        if (job != null && Files.isDirectory(job)) {
            throw new FileSystemException(job.toString(), null, "is a folder and no job file");
        }
        if (job != null && !Files.exists(job)) {
            throw new NoSuchFileException(job.toString());
        }
        Proof proof;
        try {
            var now = new Making(Kerbfolio.program(), templates);
            proof = new Prover(now, (file, making) -> Rerun.of(file, making).issued(), job).prove(content());
        } catch (UnreadablePdf e) {
            throw new FileSystemException(pdf.toString(), null, e.getMessage());
        }
        spec.commandLine().getOut().print(Terminal.proof(proof));
        spec.commandLine().getOut().flush();
        return exitCode(proof.answer());
    }

    private byte[] content() throws Exception {
        if (Files.isDirectory(pdf)) {
            throw new FileSystemException(pdf.toString(), null, "is a folder; give the dossier.pdf in it");
        }
        try (InputStream in = Files.newInputStream(pdf)) {
            byte[] content = in.readNBytes(PdfFile.MOST_BYTES + 1);
            if (content.length > PdfFile.MOST_BYTES) {
                throw new FileSystemException(
                        pdf.toString(),
                        null,
                        "is larger than " + PdfFile.MOST_BYTES / 1_000_000 + " MB; no dossier is");
            }
            return content;
        }
    }

    private static int exitCode(Answer answer) {
        return switch (answer) {
            case HOLDS -> Kerbfolio.FREE;
            case NOT_OURS -> Kerbfolio.WRONG;
            case CHANGED, OTHER_JOB, OTHER_PROGRAM, OTHER_SET, OTHER_TEMPLATES, REFUSED -> Kerbfolio.HELD;
        };
    }
}

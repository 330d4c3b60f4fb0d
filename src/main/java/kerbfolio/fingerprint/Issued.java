package kerbfolio.fingerprint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import kerbfolio.dossier.Dossier;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.pdf.DossierPdf;
import kerbfolio.pdf.Pdf;
import kerbfolio.reading.JsonWriter;
import kerbfolio.workbook.Workbook;

/**
 * A dossier as it is issued: its files, whole.
 *
 * @param record what it was made from
 * @param files by their name, in the order they are written
 * @param complaints what could not be printed as written; best none
 */
public record Issued(DossierRecord record, Map<String, byte[]> files, List<String> complaints) {
    /** The pages. */
    public static final String PDF = "dossier.pdf";

    /** The same figures, live. */
    public static final String WORKBOOK = "dossier.xlsx";

    /** The findings, for programs. */
    public static final String FINDINGS = "findings.json";

    /** What it was made from and the hash of each file made, for programs. */
    public static final String FINGERPRINT = "fingerprint.json";

    /** What {@link #FINGERPRINT} holds. */
    private record Fingerprint(String fingerprint, DossierRecord record, List<Hashed> outputs) {}

    /**
     * Writes the files into memory, the workbook beside the pages.
     *
     * @param dossier what is printed, with the fingerprint of the inputs' record
     */
    public static Issued of(Dossier dossier, Inputs inputs) {
        var workbook = new FutureTask<byte[]>(() -> Workbook.write(dossier));
        var beside = new Thread(workbook, "workbook");
        beside.setDaemon(true); // pages that fail do not wait for it
        beside.start();
        Pdf pdf = DossierPdf.write(
                dossier,
                inputs.inside(() -> outcome(workbook)),
                inputs.prints(),
                inputs.making().templates());
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(PDF, pdf.content());
        files.put(WORKBOOK, outcome(workbook));
        files.put(FINDINGS, inputs.findings());
        List<Hashed> outputs = files.entrySet().stream()
                .map(file -> new Hashed(file.getKey(), Sha256.of(file.getValue())))
                .toList();
        DossierRecord record = inputs.record();
        files.put(FINGERPRINT, JsonWriter.write(new Fingerprint(record.fingerprint(), record, outputs)));
        return new Issued(record, files, pdf.complaints());
    }

    byte[] file(String name) {
        byte[] content = files.get(name);
        if (content == null) {
            throw new IllegalArgumentException("a dossier has no file " + name);
        }
        return content;
    }

    /** What the other thread came to; whatever it failed with, as if it had failed here. */
    private static byte[] outcome(FutureTask<byte[]> task) {
        try {
            return task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            if (e.getCause() instanceof Error failure) {
                throw failure;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the workbook was written", e);
        }
    }
}

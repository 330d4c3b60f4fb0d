package kerbfolio.fingerprint;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import kerbfolio.check.RequirementSets;
import kerbfolio.check.SetFile;
import kerbfolio.dossier.FindingsFile;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import kerbfolio.job.JobFile;
import kerbfolio.job.NamedFile;
import kerbfolio.pdf.Attachment;
import kerbfolio.pdf.Attachment.Relation;
import kerbfolio.photo.Print;
import kerbfolio.photo.Prints;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.JsonWriter;
import kerbfolio.release.Release;

/**
 * What a dossier is made from, at hand, and the record of it.
 *
 * @param job the job file
 * @param sets the requirement sets in force
 * @param findings what was found, as programs read it
 * @param prints the photographs as they are printed, by the name of their file
 * @param making what else goes in
 * @param record all of that by hash
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record Inputs(
        JobFile job,
        List<SetFile> sets,
        byte[] findings,
        Map<String, Print> prints,
        Making making,
        DossierRecord record) {
    /** Keeps its own list. */
    public Inputs {
        sets = List.copyOf(sets);
    }

    /**
     * Makes the prints and takes the hashes.
     *
     * @throws Complaints with every photograph that cannot be printed
     * @throws IOException if a file the job names cannot be read any more
     */
    public static Inputs of(JobFile job, RequirementSets sets, Release release, Making making)
            throws Complaints, IOException {
        byte[] findings = JsonWriter.write(FindingsFile.of(release));
        Map<String, Print> prints = Prints.of(job);
        var record = new DossierRecord(
                making.program(),
                new Hashed(name(job), Sha256.of(job.bytes())),
                named(job, making.known()),
                hashed(prints),
                sets.files().stream().map(Inputs::hashed).toList(),
                making.templatesHash(),
                Sha256.of(findings));
        return new Inputs(job, sets.files(), findings, prints, making, record);
    }

    private static String name(JobFile job) {
        return String.valueOf(job.file().getFileName());
    }

    private static List<Hashed> named(JobFile job, Map<String, String> known) throws IOException {
        Map<String, Hashed> files = new LinkedHashMap<>();
        for (NamedFile file : job.job().namedFiles()) {
            String hash = known.get(file.name());
            if (!files.containsKey(file.name())) {
                files.put(
                        file.name(),
                        new Hashed(file.name(), hash == null ? Sha256.of(job.attachment(file.name())) : hash));
            }
        }
        return List.copyOf(files.values());
    }

    static List<Hashed> hashed(Map<String, Print> prints) {
        return prints.entrySet().stream()
                .map(print ->
                        new Hashed(print.getKey(), Sha256.of(print.getValue().jpeg())))
                .toList();
    }

    private static HashedSet hashed(SetFile file) {
        return new HashedSet(file.set().set(), file.set().edition(), file.own(), Sha256.of(file.bytes()));
    }

    /**
     * What travels inside the PDF: all a rerun needs, and what it is to be compared with. The workbook and the findings hold
     * the figures of the tables and not the dossier over again, so they are data and no alternative to it (ISO 19005-3,
     * annex E).
     */
    List<Attachment> inside(Supplier<byte[]> workbook) {
        var inside = new ArrayList<Attachment>();
        inside.add(new Attachment(
                name(job),
                name(job).endsWith(".json") ? "application/json" : "application/yaml",
                Relation.SOURCE,
                "the job file this dossier was made from",
                job.bytes()));
        sets.stream()
                .filter(SetFile::own)
                .forEach(set -> inside.add(new Attachment(
                        set.file(),
                        "application/yaml",
                        Relation.SOURCE,
                        "requirement set of the shop's own: " + set.set().set(),
                        set.bytes())));
        prints.forEach((file, print) -> inside.add(
                new Attachment(file, "image/jpeg", Relation.SUPPLEMENT, "photograph as it is printed", print.jpeg())));
        inside.add(new Attachment(
                Issued.WORKBOOK,
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
                Relation.DATA,
                "the figures of this dossier as a workbook that computes",
                workbook));
        inside.add(new Attachment(
                Issued.FINDINGS, "application/json", Relation.DATA, "the findings, for programs", findings));
        inside.add(new Attachment(
                DossierRecord.FILE,
                "application/json",
                Relation.SUPPLEMENT,
                "record of what this dossier was made from, by hash",
                record.json()));
        return inside;
    }
}

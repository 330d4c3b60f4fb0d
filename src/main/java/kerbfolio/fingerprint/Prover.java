package kerbfolio.fingerprint;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import kerbfolio.pdf.PdfFile;
import kerbfolio.pdf.UnreadablePdf;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;
import org.jspecify.annotations.Nullable;

/**
 * Says whether the record in a PDF holds: takes the job out of it, makes the dossier anew, and compares. The first reason
 * why it does not is the answer, in the order what is inside, who issued it, by what rules, and only then byte for byte.
 */
public final class Prover {
    private static final String ASK = "Ask whoever issued it for the file as it was issued.";

    private final Making now;
    private final Maker maker;
    private final @Nullable Path job;

    /**
     * A prover.
     *
     * @param now this program, and the templates given
     * @param maker makes a dossier
     * @param job a job file that lies beside the PDF, to be compared with the record; null if none was given
     */
    public Prover(Making now, Maker maker, @Nullable Path job) {
        this.now = now;
        this.maker = maker;
        this.job = job;
    }

    /**
     * Examines a PDF.
     *
     * @throws UnreadablePdf if it cannot be read
     * @throws IOException if something else cannot be read, or there is no room to unpack the job
     */
    public Proof prove(byte[] given) throws IOException {
        if (!PdfFile.isPdf(given)) {
            return new Proof(Answer.NOT_OURS, "the file is no PDF", "Give the dossier.pdf of a dossier.");
        }
        try (PdfFile pdf = PdfFile.open(given)) {
            byte[] recorded;
            try {
                recorded = pdf.attachment(DossierRecord.FILE);
            } catch (UnreadablePdf e) {
                return new Proof(Answer.CHANGED, "the record inside " + e.getMessage(), ASK);
            }
            if (recorded == null) {
                return new Proof(
                        Answer.NOT_OURS,
                        "the PDF holds no file " + DossierRecord.FILE + ", which every dossier does",
                        "Give the dossier.pdf of a dossier; a copy that was printed or saved anew proves nothing.");
            }
            try {
                return prove(given, pdf, DossierRecord.read(recorded));
            } catch (Complaints e) {
                return strange(recorded, e);
            }
        }
    }

    /** A record of a later program may say more than this one can read, and another program may have a file of that name. */
    private Proof strange(byte[] recorded, Complaints complaints) {
        String what = "the record inside cannot be read: " + complaints.list().get(0);
        String program = now.program();
        try {
            Object record = RecordReader.loose(DossierRecord.FILE, recorded);
            program = record instanceof Map<?, ?> keys && keys.get("program") instanceof String named ? named : "";
        } catch (Complaints damaged) {
            // a damaged record names no program: it is taken for one of this
        }
        if (program.isEmpty()) {
            return new Proof(Answer.NOT_OURS, what, "Give the dossier.pdf of a dossier.");
        }
        return program.equals(now.program())
                ? new Proof(Answer.CHANGED, what, ASK)
                : otherProgram(program, List.of(what));
    }

    private Proof prove(byte[] given, PdfFile pdf, DossierRecord record) throws IOException {
        if (!Unpacked.isOrderly(record)) {
            return new Proof(
                    Answer.NOT_OURS,
                    "the record names a file that does not lie beside a job file; this program writes no such record",
                    "Do not trust this file. " + ASK);
        }
        Optional<Proof> inside = inside(pdf, record);
        if (inside.isPresent()) {
            return inside.get();
        }
        try (Unpacked unpacked = Unpacked.of(pdf, record)) {
            List<String> beside = job == null ? List.of() : Differences.beside(job, record);
            if (!beside.isEmpty()) {
                return new Proof(
                        Answer.OTHER_JOB,
                        beside,
                        "Give the job file this dossier was issued from, or issue a new revision from the present one.");
            }
            return rerun(given, pdf, record, unpacked.job());
        }
    }

    /** Whether the files that travel inside are those the record names. */
    private static Optional<Proof> inside(PdfFile pdf, DossierRecord record) {
        String job = Differences.inside(pdf, record.job().file(), record.job().sha256());
        if (!job.isEmpty()) {
            return Optional.of(new Proof(Answer.OTHER_JOB, "the job file inside, " + job, ASK));
        }
        for (HashedSet set : record.sets()) {
            String own = set.own() ? Differences.inside(pdf, set.file(), set.sha256()) : "";
            if (!own.isEmpty()) {
                return Optional.of(new Proof(Answer.OTHER_JOB, "the shop's own requirement set inside, " + own, ASK));
            }
        }
        for (Hashed print : record.prints()) {
            String photograph = Differences.inside(pdf, print.file(), print.sha256());
            if (!photograph.isEmpty()) {
                return Optional.of(new Proof(Answer.CHANGED, "the photograph inside, " + photograph, ASK));
            }
        }
        String findings = Differences.inside(pdf, Issued.FINDINGS, record.findings());
        return findings.isEmpty()
                ? Optional.empty()
                : Optional.of(new Proof(Answer.CHANGED, "the file of findings inside, " + findings, ASK));
    }

    private Proof rerun(byte[] given, PdfFile pdf, DossierRecord record, Path unpacked) throws IOException {
        boolean sameProgram = record.program().equals(now.program());
        if (sameProgram) {
            Optional<Proof> templates = templates(record);
            if (templates.isPresent()) {
                return templates.get();
            }
        }
        Map<String, String> known = record.files().stream()
                .collect(Collectors.toMap(Hashed::file, Hashed::sha256, (first, second) -> first));
        Issued again;
        try {
            // Two versions are compared by their findings: templates of the shop's own may not suit this one.
            again = maker.make(unpacked, new Making(now.program(), sameProgram ? now.templates() : null, known));
        } catch (Complaints e) {
            List<String> refused = List.of("this program refuses the job file inside: "
                    + e.list().get(0)
                    + (e.list().size() > 1 ? " (the first of " + e.list().size() + ")" : ""));
            return sameProgram ? new Proof(Answer.REFUSED, refused, ASK) : otherProgram(record.program(), refused);
        }
        List<String> sets = Differences.sets(record, again.record());
        if (!sameProgram) {
            var found = new ArrayList<String>(sets);
            found.addAll(findings(pdf, again));
            return otherProgram(record.program(), found);
        }
        if (!sets.isEmpty()) {
            var found = new ArrayList<String>(sets);
            found.addAll(findings(pdf, again));
            return new Proof(
                    Answer.OTHER_SET,
                    found,
                    "Prove it with the program and the sets it was issued with, or issue a new revision by the present ones.");
        }
        return compare(given, pdf, record, again.file(Issued.PDF));
    }

    private Proof compare(byte[] given, PdfFile pdf, DossierRecord record, byte[] again) throws IOException {
        if (!Arrays.equals(given, again)) {
            return new Proof(Answer.CHANGED, Parts.differing(pdf, given, again), ASK);
        }
        List<String> prints = job == null ? List.of() : Differences.prints(job, record);
        if (!prints.isEmpty()) {
            return new Proof(Answer.CHANGED, prints, ASK);
        }
        var found = new ArrayList<String>();
        found.add(record.job().file() + ", taken out of it and rerun by " + now.program()
                + ", gives this PDF again, byte for byte");
        if (job == null && !record.files().isEmpty()) {
            found.add("originals of papers and pictures, recorded by their hash and not compared: "
                    + record.files().stream().map(Hashed::file).collect(Collectors.joining(", "))
                    + "; --job FILE compares them");
        } else if (job != null) {
            found.add("the job file given, and what lies beside it, are those of the record");
        }
        if (record.templates() != null) {
            found.add("it was issued with templates of the shop's own, so the words on its pages are the shop's own"
                    + " and not this program's");
        }
        return new Proof(
                Answer.HOLDS,
                found,
                "Compare its fingerprint, " + record.fingerprint()
                        + ", with the one at the foot of the page you hold.");
    }

    private Optional<Proof> templates(DossierRecord record) throws IOException {
        String given = now.templatesHash();
        if (Objects.equals(given, record.templates())) {
            return Optional.empty();
        }
        if (record.templates() == null) {
            return Optional.of(new Proof(
                    Answer.OTHER_TEMPLATES,
                    "it was issued with the program's own templates",
                    "Leave out --templates."));
        }
        if (given == null) {
            return Optional.of(new Proof(
                    Answer.OTHER_TEMPLATES,
                    "it was issued with templates of the shop's own, which do not travel inside",
                    "Give their folder: --templates DIR."));
        }
        return Optional.of(new Proof(
                Answer.OTHER_TEMPLATES,
                "the templates given are not those it was issued with: "
                        + Differences.contrast(record.templates(), given),
                "Give the folder as it was on the day of issue."));
    }

    private static List<String> findings(PdfFile pdf, Issued again) throws UnreadablePdf {
        byte[] issued = pdf.attachment(Issued.FINDINGS);
        return FindingsDiffer.sentences(issued == null ? new byte[0] : issued, again.file(Issued.FINDINGS));
    }

    private Proof otherProgram(String program, List<String> found) {
        var all = new ArrayList<String>();
        all.add("issued by " + program + "; this is " + now.program()
                + ", and two versions need not print the same pages");
        all.addAll(found);
        all.add("its pages, its workbook and its pictures were not compared");
        return new Proof(Answer.OTHER_PROGRAM, all, "Prove it with " + program + ".");
    }
}

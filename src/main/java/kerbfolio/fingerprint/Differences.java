package kerbfolio.fingerprint;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kerbfolio.fingerprint.DossierRecord.Hashed;
import kerbfolio.fingerprint.DossierRecord.HashedSet;
import kerbfolio.job.JobFile;
import kerbfolio.pdf.PdfFile;
import kerbfolio.pdf.UnreadablePdf;
import kerbfolio.photo.Prints;
import kerbfolio.reading.Complaints;

/** What a record names, against what there is. */
final class Differences {
    private static final int SHOWN_DIGITS = 16;

    private Differences() {}

    /** What is wrong with a file that travels inside a PDF; an empty text if nothing is. */
    static String inside(PdfFile pdf, String name, String hash) {
        try {
            byte[] content = pdf.attachment(name);
            if (content == null) {
                return name + ", is missing";
            }
            String found = Sha256.of(content);
            return found.equals(hash) ? "" : name + ", is not the one the record names: " + contrast(hash, found);
        } catch (UnreadablePdf e) {
            return name + ", " + e.getMessage();
        }
    }

    /** What differs of a job file that was given, and of the files beside it. */
    static List<String> beside(Path job, DossierRecord record) throws IOException {
        var differing = new ArrayList<String>();
        compare(job, record.job(), differing);
        for (Hashed file : record.files()) {
            compare(job.resolveSibling(file.file()), file, differing);
        }
        for (HashedSet set : record.sets()) {
            if (set.own()) {
                compare(job.resolveSibling(set.file()), new Hashed(set.file(), set.sha256()), differing);
            }
        }
        return differing;
    }

    private static void compare(Path file, Hashed recorded, List<String> differing) throws IOException {
        if (!Files.isRegularFile(file)) {
            differing.add("there is no file " + file);
            return;
        }
        String found = Sha256.of(file);
        if (!found.equals(recorded.sha256())) {
            differing.add("the file " + file + " is not the " + recorded.file() + " the record names: "
                    + contrast(recorded.sha256(), found));
        }
    }

    /** Which prints a record names are not those this program makes beside a job file, which is the one of the record. */
    static List<String> prints(Path job, DossierRecord record) throws IOException {
        var differing = new ArrayList<String>();
        try {
            Map<String, String> made = Inputs.hashed(Prints.of(JobFile.read(job))).stream()
                    .collect(Collectors.toMap(Hashed::file, Hashed::sha256));
            for (Hashed print : record.prints()) {
                String found = made.getOrDefault(print.file(), "none");
                if (!found.equals(print.sha256())) {
                    differing.add("the photograph inside, " + print.file() + ", is not the print of the file given: "
                            + contrast(print.sha256(), found));
                }
            }
        } catch (Complaints e) {
            differing.add("the job file given cannot be printed: " + e.list().get(0));
        }
        return differing;
    }

    /** What differs of the requirement sets a dossier was issued by and those of a rerun. */
    static List<String> sets(DossierRecord issued, DossierRecord again) {
        Map<String, HashedSet> present = new TreeMap<>();
        again.sets().forEach(set -> present.put(set.set(), set));
        var differing = new ArrayList<String>();
        for (HashedSet was : issued.sets()) {
            HashedSet is = present.remove(was.set());
            if (is == null) {
                differing.add("requirement set " + was + ", was in force and is not now");
            } else if (!is.toString().equals(was.toString())) {
                differing.add("requirement set " + was + ", was in force; this program has " + is);
            } else if (!is.equals(was)) {
                differing.add("requirement set " + was + ", has other content in this program: "
                        + contrast(was.sha256(), is.sha256()));
            }
        }
        present.values().forEach(is -> differing.add("requirement set " + is + ", is in force now and was not"));
        return differing;
    }

    /** Two hashes that differ, as far as an eye compares them. */
    static String contrast(String recorded, String found) {
        return "recorded SHA-256 " + start(recorded) + "…, found " + start(found) + "…";
    }

    private static String start(String hash) {
        return hash.substring(0, Math.min(hash.length(), SHOWN_DIGITS));
    }
}

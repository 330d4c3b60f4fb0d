package kerbfolio.release;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kerbfolio.check.Examination;
import kerbfolio.job.Job;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.Nearest;

/** A waiver of a finding that is not there, or of a check that does not exist, would be lost without a word. */
public final class Names {
    private Names() {}

    /** Complains of every waiver and every entry of not-applicable that names nothing. */
    public static void check(JobFile file, List<Examination> examinations) throws Complaints {
        Set<String> findings = new LinkedHashSet<>();
        Set<String> checks = new LinkedHashSet<>();
        for (Examination examination : examinations) {
            checks.add(examination.check().id());
            examination.rows().forEach(row -> findings.add(row.id()));
        }
        checks.addAll(findings);
        Job job = file.job();
        var wrong = new ArrayList<Complaint>();
        for (int i = 0; i < job.waivers().size(); i++) {
            unknown(file, "waivers[" + i + "].finding", job.waivers().get(i).finding(), findings, wrong);
        }
        for (int i = 0; i < job.notApplicable().size(); i++) {
            unknown(
                    file,
                    "not-applicable[" + i + "].check",
                    job.notApplicable().get(i).check(),
                    checks,
                    wrong);
        }
        if (!wrong.isEmpty()) {
            throw new Complaints(wrong);
        }
    }

    private static void unknown(JobFile file, String path, String name, Set<String> known, List<Complaint> wrong) {
        if (!known.contains(name)) {
            String what = "there is no `" + name + "`" + Nearest.hint(name, List.copyOf(known));
            wrong.addAll(file.places().refusal(path, what).list());
        }
    }
}

package kerbfolio.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kerbfolio.job.Confirmation;
import kerbfolio.job.Job;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;

/** Finds the requirement sets a job names: those that travel with the program, or a shop's own file beside the job file. */
public final class RequirementSets {
    /** The set a job is judged by if it names none. */
    public static final String DEFAULT = "un-ece";

    private static final String HOUSE = "house";
    private static final String BUILT_IN = "un-ece or us-federal";

    private RequirementSets() {}

    /**
     * The limits in force for a job.
     *
     * @throws Complaints if a set the job names is not there or is wrong
     */
    public static Limits limits(JobFile file) throws Complaints, IOException {
        Job job = file.job();
        String home = job.job().homeSet();
        var compared = new ArrayList<RequirementSet>();
        for (String name : job.job().comparedWith()) {
            compared.add(find(name, file, "job.compared-with"));
        }
        var limits = new Limits(
                find(home == null ? DEFAULT : home, file, "job.home-set"),
                shipped(HOUSE, file, "job.home-set"),
                compared,
                job);
        confirmed(limits, file);
        return limits;
    }

    /** A confirmation of a figure no set in force has confirms nothing, and whoever wrote it should know. */
    private static void confirmed(Limits limits, JobFile file) throws Complaints {
        var wrong = new ArrayList<Complaint>();
        List<Confirmation> confirmations = file.job().confirmations();
        for (int i = 0; i < confirmations.size(); i++) {
            Confirmation confirmation = confirmations.get(i);
            for (String key : confirmation.limits()) {
                if (!limits.has(confirmation.set(), key)) {
                    String what = "set `" + confirmation.set() + "` is not in force here or has no `" + key + "`";
                    wrong.addAll(file.places()
                            .refusal("confirmations[" + i + "].limits", what)
                            .list());
                }
            }
        }
        if (!wrong.isEmpty()) {
            throw new Complaints(wrong);
        }
    }

    /** A shop's own file goes before the one that travels with the program, and the paper says so. */
    private static RequirementSet find(String name, JobFile file, String path) throws Complaints, IOException {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]*") || name.equals(HOUSE)) {
            throw file.places().refusal(path, "`" + name + "` is no name of a requirement set; write " + BUILT_IN);
        }
        Path own = file.file().resolveSibling(name + ".yaml");
        if (!Files.isRegularFile(own) || own.equals(file.file())) {
            return shipped(name, file, path);
        }
        RequirementSet set = RecordReader.read(own.toString(), RecordReader.bytes(own), RequirementSet.class)
                .value();
        if (!set.set().equals(name)) {
            throw file.places().refusal(path, "the file " + own + " calls itself `" + set.set() + "`");
        }
        String title = set.title() + " (the shop's own file " + name + ".yaml)";
        return new RequirementSet(set.set(), title, set.documents(), set.limits(), set.evidence());
    }

    private static RequirementSet shipped(String name, JobFile file, String path) throws Complaints, IOException {
        try (InputStream in = RequirementSets.class.getResourceAsStream("/shared/requirement-sets/" + name + ".yaml")) {
            if (in == null) {
                throw file.places()
                        .refusal(
                                path,
                                "there is no requirement set `" + name + "`; write " + BUILT_IN + ", or put a file "
                                        + name + ".yaml beside the job file");
            }
            return RecordReader.read(name + ".yaml", in.readAllBytes(), RequirementSet.class)
                    .value();
        }
    }
}

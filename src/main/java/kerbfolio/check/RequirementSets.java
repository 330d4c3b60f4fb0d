package kerbfolio.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.job.Confirmation;
import kerbfolio.job.Job;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;

/**
 * Finds the requirement sets a job names: those that travel with the program, or a shop's own file beside the job file.
 *
 * @param limits the limits in force
 * @param files the sets they come from, each once: the home set, the program's own rules, those for comparison
 */
public record RequirementSets(Limits limits, List<SetFile> files) {
    /** The set a job is judged by if it names none. */
    public static final String DEFAULT = "un-ece";

    private static final String HOUSE = "house";
    private static final String BUILT_IN = "un-ece or us-federal";

    /** Keeps its own list. */
    public RequirementSets {
        files = List.copyOf(files);
    }

    /** The limits in force for a job. */
    public static Limits limits(JobFile file) throws Complaints, IOException {
        return of(file).limits();
    }

    /**
     * The sets in force for a job.
     *
     * @throws Complaints if a set the job names is not there or is wrong
     */
    public static RequirementSets of(JobFile file) throws Complaints, IOException {
        Job job = file.job();
        String named = job.job().homeSet();
        var compared = new ArrayList<SetFile>();
        for (String name : job.job().comparedWith()) {
            compared.add(find(name, file, "job.compared-with"));
        }
        SetFile home = find(named == null ? DEFAULT : named, file, "job.home-set");
        SetFile house = shipped(HOUSE, file, "job.home-set");
        var limits = new Limits(
                home.set(), house.set(), compared.stream().map(SetFile::set).toList(), job);
        confirmed(limits, file);
        Map<String, SetFile> files = new LinkedHashMap<>();
        files.put(home.set().set(), home);
        files.put(HOUSE, house);
        compared.forEach(set -> files.putIfAbsent(set.set().set(), set));
        return new RequirementSets(limits, List.copyOf(files.values()));
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
    private static SetFile find(String name, JobFile file, String path) throws Complaints, IOException {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]*") || name.equals(HOUSE)) {
            throw file.places().refusal(path, "`" + name + "` is no name of a requirement set; write " + BUILT_IN);
        }
        Path own = file.file().resolveSibling(name + ".yaml");
        if (!Files.isRegularFile(own) || own.equals(file.file())) {
            return shipped(name, file, path);
        }
        byte[] bytes = RecordReader.bytes(own);
        RequirementSet set =
                RecordReader.read(name + ".yaml", bytes, RequirementSet.class).value();
        if (!set.set().equals(name)) {
            throw file.places().refusal(path, "the file " + name + ".yaml calls itself `" + set.set() + "`");
        }
        String title = set.title() + " (the shop's own file " + name + ".yaml)";
        return new SetFile(
                new RequirementSet(set.set(), title, set.edition(), set.documents(), set.limits(), set.evidence()),
                true,
                bytes);
    }

    private static SetFile shipped(String name, JobFile file, String path) throws Complaints, IOException {
        try (InputStream in = RequirementSets.class.getResourceAsStream("/shared/requirement-sets/" + name + ".yaml")) {
            if (in == null) {
                throw file.places()
                        .refusal(
                                path,
                                "there is no requirement set `" + name + "`; write " + BUILT_IN + ", or put a file "
                                        + name + ".yaml beside the job file");
            }
            byte[] bytes = in.readAllBytes();
            return new SetFile(
                    RecordReader.read(name + ".yaml", bytes, RequirementSet.class)
                            .value(),
                    false,
                    bytes);
        }
    }
}

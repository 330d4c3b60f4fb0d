package kerbfolio.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import kerbfolio.job.Job;
import kerbfolio.job.JobFile;
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
        return new Limits(
                find(home == null ? DEFAULT : home, file, "job.home-set"),
                find(HOUSE, file, "job.home-set"),
                compared,
                job);
    }

    /** A shop's own file goes before the one that travels with the program. */
    private static RequirementSet find(String name, JobFile file, String path) throws Complaints, IOException {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
            throw file.places().refusal(path, "`" + name + "` is no name of a requirement set");
        }
        Path own = file.file().resolveSibling(name + ".yaml");
        if (Files.isRegularFile(own) && !own.equals(file.file())) {
            return RecordReader.read(own.toString(), RecordReader.bytes(own), RequirementSet.class)
                    .value();
        }
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

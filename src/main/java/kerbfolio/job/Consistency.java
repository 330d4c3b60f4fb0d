package kerbfolio.job;

import kerbfolio.reading.ComplaintBook;
import kerbfolio.reading.Meaning;
import kerbfolio.reading.Quoted;

/** Third pass: what the sections of a job file must be together before anything is computed from them. */
record Consistency(Attachments attachments) implements Meaning<Job> {
    private static final String FOLDER_NAME = "[A-Za-z0-9_]([A-Za-z0-9._-]{0,38}[A-Za-z0-9_-])?";

    @Override
    public void examine(Job job, ComplaintBook complaints) {
        if (!job.kerbfolio().isEmpty() && !job.kerbfolio().equals("1")) {
            complaints.add("kerbfolio", "this program reads version 1 of the format; write `kerbfolio: 1`");
        }
        folderName("job.number", job.job().number(), complaints);
        folderName("job.revision", job.job().revision(), complaints);
        new Ids(job, complaints).examine();
        new Wiring(job, complaints).examine();
        new Mentions(job, complaints).examine();
        new Days(job, complaints).examine();
        new Plausibility(complaints).examine(job);
        if (job.pack() != null) {
            new PackConsistency(job.pack(), complaints).examine();
        }
        attached(job, complaints);
    }

    private static void folderName(String path, String text, ComplaintBook complaints) {
        if (!text.isEmpty() && !text.matches(FOLDER_NAME)) {
            complaints.add(
                    path,
                    Quoted.of(text) + " names the dossier's folder; write at most 40 of A-Z a-z 0-9 - _ ."
                            + " and begin and end with a letter or digit");
        }
    }

    private void attached(Job job, ComplaintBook complaints) {
        for (NamedFile file : job.namedFiles()) {
            attachments.objection(file.name()).ifPresent(objection -> complaints.add(file.path(), objection));
        }
    }
}

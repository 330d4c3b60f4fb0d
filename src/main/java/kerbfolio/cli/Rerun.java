package kerbfolio.cli;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kerbfolio.car.Car;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSets;
import kerbfolio.checks.CheckList;
import kerbfolio.dossier.Dossier;
import kerbfolio.fingerprint.Inputs;
import kerbfolio.fingerprint.Issued;
import kerbfolio.fingerprint.Making;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaints;
import kerbfolio.release.Names;
import kerbfolio.release.Release;

/**
 * A job file read and every check run again: what the commands start from.
 *
 * @param release the gates
 * @param dossier what is printed
 * @param inputs the job file, and all else the dossier is made from
 */
record Rerun(Release release, Dossier dossier, Inputs inputs) {
    static Rerun of(Path path) throws Complaints, IOException {
        return of(path, new Making(Kerbfolio.program(), null));
    }

    static Rerun of(Path path, Making making) throws Complaints, IOException {
        if (Files.isDirectory(path)) {
            throw new FileSystemException(path.toString(), null, "is a folder and no job file");
        }
        JobFile file = JobFile.read(path);
        RequirementSets sets = RequirementSets.of(file);
        Limits limits = sets.limits();
        var car = new Car(file.job());
        List<Examination> examinations = CheckList.ALL.stream()
                .map(check -> Examination.of(check, car, limits))
                .toList();
        Names.check(file, examinations);
        var release = new Release(file.job(), examinations, limits);
        var inputs = Inputs.of(file, sets, release, making);
        String fingerprint = inputs.record().fingerprint();
        return new Rerun(release, Dossier.of(car, release, limits, making.program(), fingerprint), inputs);
    }

    JobFile file() {
        return inputs.job();
    }

    /** The dossier's files. */
    Issued issued() throws Complaints, IOException {
        return Issued.of(dossier, inputs);
    }

    int exitCode() {
        return exitCode(release);
    }

    static int exitCode(Release release) {
        return release.isFree() ? Kerbfolio.FREE : Kerbfolio.HELD;
    }
}

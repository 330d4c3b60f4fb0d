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
 * @param file the job
 * @param sets the requirement sets in force
 * @param car the car
 * @param release the gates
 * @param making what else a dossier is made from
 */
record Rerun(JobFile file, RequirementSets sets, Car car, Release release, Making making) {
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
        return new Rerun(file, sets, car, new Release(file.job(), examinations, limits), making);
    }

    /** What is printed, but for the fingerprint, which takes the prints of all photographs. */
    Dossier dossier() {
        return dossier("");
    }

    Dossier dossier(String fingerprint) {
        return Dossier.of(car, release, sets.limits(), making.program(), fingerprint);
    }

    /** All a dossier is made from. */
    Inputs inputs() throws Complaints, IOException {
        return Inputs.of(file, sets, release, making);
    }

    /** The dossier's files. */
    Issued issued() throws Complaints, IOException {
        Inputs inputs = inputs();
        return Issued.of(dossier(inputs.record().fingerprint()), inputs);
    }

    int exitCode() {
        return exitCode(release);
    }

    static int exitCode(Release release) {
        return release.isFree() ? Kerbfolio.FREE : Kerbfolio.HELD;
    }
}

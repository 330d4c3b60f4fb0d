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
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaints;
import kerbfolio.release.Names;
import kerbfolio.release.Release;

/**
 * A job file read and every check run again: what the commands start from.
 *
 * @param file the job file
 * @param release the gates
 * @param dossier what is printed
 */
record Rerun(JobFile file, Release release, Dossier dossier) {
    static Rerun of(Path path) throws Complaints, IOException {
        if (Files.isDirectory(path)) {
            throw new FileSystemException(path.toString(), null, "is a folder and no job file");
        }
        JobFile file = JobFile.read(path);
        Limits limits = RequirementSets.limits(file);
        var car = new Car(file.job());
        List<Examination> examinations = CheckList.ALL.stream()
                .map(check -> Examination.of(check, car, limits))
                .toList();
        Names.check(file, examinations);
        var release = new Release(file.job(), examinations, limits);
        return new Rerun(file, release, Dossier.of(car, release, limits, Kerbfolio.program()));
    }

    int exitCode() {
        return release.isFree() ? Kerbfolio.FREE : Kerbfolio.HELD;
    }
}

package kerbfolio.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSets;
import kerbfolio.checks.CheckList;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaints;
import kerbfolio.release.Release;

/** A job read and run again as the program does it, for the tests of its workbook. */
record IssuedJob(JobFile file, Dossier dossier) {
    private static final Path SAMPLES = Path.of("sample-jobs");

    static IssuedJob sample(String name) {
        return of(SAMPLES.resolve(name + ".yaml"));
    }

    /** A sample with some of its text replaced. */
    static IssuedJob changed(String name, Path folder, String... fromTo) {
        try {
            String text = Files.readString(SAMPLES.resolve(name + ".yaml"), StandardCharsets.UTF_8);
            for (int i = 0; i < fromTo.length; i += 2) {
                if (!text.contains(fromTo[i])) {
                    throw new IllegalArgumentException("sample " + name + " does not hold " + fromTo[i]);
                }
                text = text.replace(fromTo[i], fromTo[i + 1]);
            }
            copy("photos", folder);
            return of(Files.writeString(folder.resolve("job.yaml"), text, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** What the samples name lies beside them. */
    private static void copy(String name, Path folder) throws IOException {
        Path there = Files.createDirectories(folder.resolve(name));
        try (Stream<Path> files = Files.list(SAMPLES.resolve(name))) {
            for (Path file : files.toList()) {
                Files.copy(file, there.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static IssuedJob of(Path path) {
        try {
            JobFile file = JobFile.read(path);
            Limits limits = RequirementSets.limits(file);
            var car = new Car(file.job());
            List<Examination> examinations = CheckList.ALL.stream()
                    .map(check -> Examination.of(check, car, limits))
                    .toList();
            var release = new Release(file.job(), examinations, limits);
            return new IssuedJob(
                    file, Dossier.of(car, release, limits, "Kerbfolio, under test", "0000-0000-0000-0000"));
        } catch (IOException | Complaints e) {
            throw new AssertionError(path + ": " + e.getMessage(), e);
        }
    }

    byte[] workbook() {
        return Workbook.write(dossier);
    }
}

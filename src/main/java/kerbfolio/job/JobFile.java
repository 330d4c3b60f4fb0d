package kerbfolio.job;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.Parsed;
import kerbfolio.reading.Places;
import kerbfolio.reading.Quoted;
import kerbfolio.reading.RecordReader;

/**
 * A job file that was read and means something as a whole.
 *
 * @param job what it says
 * @param file where it lies; attachments lie beside it
 * @param bytes exactly what was read
 * @param places where it says it
 */
@SuppressWarnings(
        "ArrayRecordComponent") // Two job files are never compared; the bytes are what gets attached and hashed.
public record JobFile(Job job, Path file, byte[] bytes, Places places) {
    /**
     * Reads a job file, YAML unless its name ends in {@code .json}.
     *
     * @throws Complaints with everything that is wrong with it
     * @throws IOException if there is no such file, or it cannot be read
     */
    public static JobFile read(Path file) throws Complaints, IOException {
        byte[] bytes = RecordReader.bytes(file);
        String name = String.valueOf(file.getFileName());
        Optional<String> objection = PlainName.objection(name);
        if (objection.isPresent()) {
            throw new Complaints(List.of(
                    new Complaint(name, 1, 1, "", "the job file's name " + Quoted.of(name) + " " + objection.get())));
        }
        Parsed<Job> parsed = RecordReader.read(name, bytes, Job.class, new Consistency(Attachments.beside(file)));
        return new JobFile(parsed.value(), file, bytes, parsed.places());
    }

    /**
     * Where an attachment the job file names really lies.
     *
     * @throws IOException if it was taken away, or moved out of the job's folder, since the job file was read
     */
    public Path attachment(String name) throws IOException {
        return Attachments.beside(file).find(name);
    }
}

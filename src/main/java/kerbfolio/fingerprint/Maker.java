package kerbfolio.fingerprint;

import java.io.IOException;
import java.nio.file.Path;
import kerbfolio.reading.Complaints;

/** Makes a dossier of a job file as {@code issue} does; the checks it takes lie beyond this package. */
public interface Maker {
    /** Reruns a job. */
    Issued make(Path job, Making making) throws Complaints, IOException;
}

package kerbfolio.photo;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.job.JobFile;
import kerbfolio.job.Photo;
import kerbfolio.reading.Complaint;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.Quoted;

/** The prints of a job's photographs. */
public final class Prints {
    private Prints() {}

    /**
     * Makes the print of every photograph the job lists, by the name the job calls the file.
     *
     * @throws Complaints with every file that cannot be printed as a picture
     * @throws IOException if a file was taken away since the job was read
     */
    public static Map<String, Print> of(JobFile file) throws Complaints, IOException {
        Map<String, Print> prints = new LinkedHashMap<>();
        List<Complaint> wrong = new ArrayList<>();
        List<Photo> photos = file.job().photos();
        for (int i = 0; i < photos.size(); i++) {
            String name = photos.get(i).file();
            if (prints.containsKey(name)) {
                continue;
            }
            try {
                prints.put(name, Print.of(file.attachment(name)));
            } catch (Print.Unprintable e) {
                wrong.addAll(file.places()
                        .refusal("photos[" + i + "].file", Quoted.of(name) + " " + e.getMessage())
                        .list());
            }
        }
        if (!wrong.isEmpty()) {
            throw new Complaints(wrong);
        }
        return Collections.unmodifiableMap(prints);
    }
}

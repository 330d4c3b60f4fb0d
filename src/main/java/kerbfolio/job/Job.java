package kerbfolio.job;

import java.util.ArrayList;
import java.util.List;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import kerbfolio.reading.Unread;
import org.jspecify.annotations.Nullable;

/** A finished job, section by section. */
public record Job(
        @Must @Means("version of this format: 1") String kerbfolio,

        @Must @Means("whose job, which revision, by what rules")
        Identity job,

        @Means("the car") @Nullable Vehicle vehicle,
        @Means("whatever measured something") List<Instrument> instruments,
        @Means("the car on the scales") @Nullable Weighings weighings,
        @Means("what was fitted") List<Part> parts,
        @Means("what was taken out") List<Removed> removed,
        @Means("what joins parts") List<Link> links,
        @Means("the traction battery") @Nullable Pack pack,
        @Means("raw readings, never results") @Nullable Readings readings,
        @Means("labels and markings that are fitted") List<Label> labels,
        @Means("figures the shop states") @Nullable Stated stated,
        @Means("what is still open, and what was closed") List<PunchItem> punchList,
        @Means("findings let pass by name") List<Waiver> waivers,
        @Means("checks that do not apply to this car") List<NotApplicable> notApplicable,
        @Means("limits confirmed against the document") List<Confirmation> confirmations,
        @Means("papers") List<Document> documents,
        @Means("pictures") List<Photo> photos,

        @Means("drop-out units; recorded, not examined by this version") @Nullable
        Unread units,

        @Means("observed tests; recorded, not examined by this version") @Nullable
        Unread tests,

        @Means("walk-round of every cable and box; recorded, not examined by this version") @Nullable
        Unread walkRound,

        @Means("what was handed over; recorded, not examined by this version") @Nullable
        Unread handedOver,

        @Means("who signs; recorded, not examined by this version") @Nullable
        Unread signOff) {
    public Job {
        instruments = Lists.orEmpty(instruments);
        parts = Lists.orEmpty(parts);
        removed = Lists.orEmpty(removed);
        links = Lists.orEmpty(links);
        labels = Lists.orEmpty(labels);
        punchList = Lists.orEmpty(punchList);
        waivers = Lists.orEmpty(waivers);
        notApplicable = Lists.orEmpty(notApplicable);
        confirmations = Lists.orEmpty(confirmations);
        documents = Lists.orEmpty(documents);
        photos = Lists.orEmpty(photos);
    }

    /** Every file the job names: papers, pictures, and the pictures that close an item of the punch list. */
    public List<NamedFile> namedFiles() {
        var files = new ArrayList<NamedFile>();
        for (int i = 0; i < documents.size(); i++) {
            add("documents[" + i + "].file", documents.get(i).file(), files);
        }
        for (int i = 0; i < photos.size(); i++) {
            String file = photos.get(i).file();
            add("photos[" + i + "].file", file.isEmpty() ? null : file, files);
        }
        for (PunchItem item : punchList) {
            Closing closed = item.closed();
            add("punch-list[" + item.id() + "].closed.photo", closed == null ? null : closed.photo(), files);
        }
        return List.copyOf(files);
    }

    private static void add(String path, @Nullable String name, List<NamedFile> files) {
        if (name != null) {
            files.add(new NamedFile(path, name));
        }
    }
}

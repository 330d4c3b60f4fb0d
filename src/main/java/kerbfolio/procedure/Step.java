package kerbfolio.procedure;

import java.util.List;
import kerbfolio.job.Job;
import kerbfolio.job.Part;
import kerbfolio.job.Photo;

/**
 * One step, as it is read beside the car.
 *
 * @param what to do, in a few words
 * @param how part by part, with names, places and values
 * @param caution why, and what hurts
 * @param with tool and protective equipment; empty if none is needed
 * @param isLive whether it brings a hand near what may be live
 * @param blanks what is written down beside the initials
 * @param photos pictures of what it speaks of
 */
public record Step(
        String what,
        List<String> how,
        String caution,
        String with,
        boolean isLive,
        List<Blank> blanks,
        List<Photo> photos) {
    /**
     * Room for a figure.
     *
     * @param label what is written there
     * @param bound what it must be; empty where it is only noted
     */
    public record Blank(String label, String bound) {}

    static Step of(String what, List<String> how, String caution, Blank... blanks) {
        return new Step(what, List.copyOf(how), caution, "", false, List.of(blanks), List.of());
    }

    /** The same with what it takes in the hand. */
    Step with(String equipment) {
        return new Step(what, how, caution, equipment, isLive, blanks, photos);
    }

    /** The same, marked as a step within reach of what may be live. */
    Step live() {
        return new Step(what, how, caution, with, true, blanks, photos);
    }

    /** The same with the pictures the job has of some parts. */
    Step showing(Job job, List<Part> parts) {
        List<Photo> shown = job.photos().stream()
                .filter(photo -> parts.stream().anyMatch(part -> part.id().equals(photo.subject())))
                .toList();
        return new Step(what, how, caution, with, isLive, blanks, shown);
    }

    static Blank blank(String label) {
        return new Blank(label, "");
    }
}

package kerbfolio.procedure;

import java.util.List;

/**
 * One step, as it is read beside the car.
 *
 * @param what to do, in a few words
 * @param how part by part, with names, places and values
 * @param caution why, and what hurts
 * @param with tool and protective equipment; empty if none is needed
 * @param isLive whether it brings a hand near what may be live
 * @param blanks what is written down beside the initials
 */
public record Step(String what, List<String> how, String caution, String with, boolean isLive, List<Blank> blanks) {
    /**
     * Room for a figure.
     *
     * @param label what is written there
     * @param bound what it must be; empty where it is only noted
     */
    public record Blank(String label, String bound) {}

    static Step of(String what, List<String> how, String caution, Blank... blanks) {
        return new Step(what, List.copyOf(how), caution, "", false, List.of(blanks));
    }

    /** The same with what it takes in the hand. */
    Step with(String equipment) {
        return new Step(what, how, caution, equipment, isLive, blanks);
    }

    /** The same, marked as a step within reach of what may be live. */
    Step live() {
        return new Step(what, how, caution, with, true, blanks);
    }

    static Blank blank(String label) {
        return new Blank(label, "");
    }
}

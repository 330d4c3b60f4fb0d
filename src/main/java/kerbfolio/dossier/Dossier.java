package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.car.Car;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.job.Job;
import kerbfolio.quantity.UnitSystem;
import kerbfolio.reading.Unread;
import kerbfolio.release.Release;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is printed, part by part; the PDF and the workbook are written from it and from nothing else.
 *
 * @param head what names the record
 * @param handover for the customer
 * @param inspection for the inspector
 * @param workshop for the next mechanic
 * @param workings for whoever asks how
 * @param unexamined sections recorded that this version does not examine
 * @param cautions the usual cautions, deferring to local codes and licensed practice
 * @param examinations the examinations printed, with their live workings
 * @param car the car
 * @param units the unit system printed large
 * @param limits the limits in force, of which drawings show some
 */
public record Dossier(
        Head head,
        Handover handover,
        Inspection inspection,
        Workshop workshop,
        WorkingsPart workings,
        List<String> unexamined,
        List<String> cautions,
        List<Examination> examinations,
        Car car,
        UnitSystem units,
        Limits limits) {

    /**
     * Arranges what was found.
     *
     * @param program this program with its version
     * @param fingerprint short name of the record, printed on every page
     */
    public static Dossier of(Car car, Release release, Limits limits, String program, String fingerprint) {
        Job job = car.job();
        UnitSystem units = job.job().units() == null ? UnitSystem.SI : job.job().units();
        List<Examination> spoken = release.spoken();
        return new Dossier(
                Head.of(job, program, fingerprint),
                Handover.of(car, release, spoken, units),
                Inspection.of(car, spoken, limits, units),
                Workshop.of(car, limits, units),
                WorkingsPart.of(spoken, units),
                unexamined(job),
                Cautions.ALL,
                spoken,
                car,
                units,
                limits);
    }

    private static List<String> unexamined(Job job) {
        var sections = new LinkedHashMap<String, @Nullable Unread>();
        sections.put("units", job.units());
        sections.put("tests", job.tests());
        sections.put("walk-round", job.walkRound());
        sections.put("handed-over", job.handedOver());
        sections.put("sign-off", job.signOff());
        var found = new ArrayList<String>();
        for (Map.Entry<String, @Nullable Unread> section : sections.entrySet()) {
            Unread content = section.getValue();
            if (content != null) {
                String entries = content.entries() == 1 ? "1 entry" : content.entries() + " entries";
                found.add(section.getKey() + " (" + entries + ")");
            }
        }
        return List.copyOf(found);
    }
}

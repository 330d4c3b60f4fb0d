package kerbfolio.dossier;

import java.util.List;
import kerbfolio.job.Identity;
import kerbfolio.job.Job;
import kerbfolio.job.Vehicle;
import org.jspecify.annotations.Nullable;

/**
 * What names the record on every page.
 *
 * @param number job number
 * @param revision revision of the dossier
 * @param date day it speaks of, ISO
 * @param car the car in a few words
 * @param shop the shop, or a dash
 * @param customer the customer, or a dash
 * @param preparedBy who answers for the record, or a dash
 * @param phone whom to call, or a dash
 * @param tier how much of the record was undertaken
 * @param paper size of the sheet as a style sheet names it
 * @param program this program with its version
 * @param fingerprint short name of this record, which tells a loose page from that of any other
 * @param lines the same as label and text, for a block
 */
public record Head(
        String number,
        String revision,
        String date,
        String car,
        String shop,
        String customer,
        String preparedBy,
        String phone,
        String tier,
        String paper,
        String program,
        String fingerprint,
        List<Line> lines) {
    /** A label with its text. */
    public record Line(String label, String text) {}

    private static final String NOTHING = "\u2014";

    static Head of(Job job, String program, String fingerprint) {
        Identity id = job.job();
        Vehicle vehicle = job.vehicle();
        String car = vehicle == null || vehicle.description() == null ? "car not described" : vehicle.description();
        return new Head(
                id.number(),
                id.revision(),
                id.date().toString(),
                car,
                or(id.shop()),
                or(id.customer()),
                or(id.preparedBy()),
                or(id.phone()),
                id.tier().toString(),
                id.paper() == null ? "a4" : id.paper().toString(),
                program,
                fingerprint,
                List.of(
                        new Line("car", car),
                        new Line("identification", or(vehicle == null ? null : vehicle.identification())),
                        new Line("plate", or(vehicle == null ? null : vehicle.plate())),
                        new Line("customer", or(id.customer())),
                        new Line("shop", or(id.shop())),
                        new Line("prepared by", or(id.preparedBy())),
                        new Line("phone", or(id.phone())),
                        new Line("date", id.date().toString()),
                        new Line("return visit", or(id.returnVisit()))));
    }

    static String or(@Nullable Object text) {
        return text == null ? NOTHING : text.toString();
    }
}

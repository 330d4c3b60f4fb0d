package kerbfolio.job;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import kerbfolio.reading.ComplaintBook;
import org.jspecify.annotations.Nullable;

/** Nothing a job records happened after the day the job speaks of. */
final class Days {
    private final Job job;
    private final ComplaintBook complaints;

    Days(Job job, ComplaintBook complaints) {
        this.job = job;
        this.complaints = complaints;
    }

    void examine() {
        Weighings weighings = job.weighings();
        if (weighings != null) {
            past("weighings.as-received.date", weighings.asReceived(), Weighing::date);
            past("weighings.as-delivered.date", weighings.asDelivered(), Weighing::date);
            past("weighings.tilt.date", weighings.tilt(), Tilt::date);
        }
        for (Instrument instrument : job.instruments()) {
            past("instruments[" + instrument.id() + "].calibrated", instrument, Instrument::calibrated);
        }
        job.punchList().forEach(this::item);
        each("documents", job.documents(), Document::date);
        each("waivers", job.waivers(), Waiver::date);
        each("not-applicable", job.notApplicable(), NotApplicable::date);
        each("confirmations", job.confirmations(), Confirmation::date);
        each("labels", job.labels(), Label::date);
        if (job.readings() != null) {
            readings(job.readings());
        }
    }

    private void readings(Readings readings) {
        for (IsolationReading reading : readings.isolation()) {
            past("readings.isolation[" + reading.id() + "].date", reading, IsolationReading::date);
        }
        past("readings.isolation-monitor.date", readings.isolationMonitor(), MonitorTest::date);
        each("readings.bonding", readings.bonding(), BondingReading::date);
        each("readings.decay", readings.decay(), DecayReading::date);
        past("readings.cells.date", readings.cells(), CellReading::date);
        past("readings.charge.date", readings.charge(), ChargeReading::date);
    }

    private void item(PunchItem item) {
        String path = "punch-list[" + item.id() + "]";
        past(path + ".raised", item, PunchItem::raised);
        past(path + ".closed.date", item.closed(), Closing::date);
        if (item.raised() != null
                && item.closed() != null
                && item.closed().date() != null
                && item.closed().date().isBefore(item.raised())) {
            complaints.add(path + ".closed.date", "closed before it was raised; correct one of the two days");
        }
    }

    private <T> void each(String list, List<T> entries, Function<T, @Nullable LocalDate> day) {
        for (int i = 0; i < entries.size(); i++) {
            past(list + "[" + i + "].date", entries.get(i), day);
        }
    }

    private <T> void past(String path, @Nullable T entry, Function<T, @Nullable LocalDate> day) {
        LocalDate written = entry == null ? null : day.apply(entry);
        // The last of all days stands in for one that could not be read.
        if (written != null
                && !written.equals(LocalDate.MAX)
                && written.isAfter(job.job().date())) {
            complaints.add(
                    path,
                    written + " is later than the job's own day, " + job.job().date()
                            + "; correct one of the two days");
        }
    }
}

package kerbfolio.job;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Sense;
import kerbfolio.reading.ComplaintBook;
import kerbfolio.reading.Quoted;
import org.jspecify.annotations.Nullable;

/** Figures no car can have, whatever was measured. */
final class Plausibility {
    /** Speed symbols of ISO 4000-1 and UN Regulation No. 30, slowest first (order from memory). */
    private static final List<String> SPEED_SYMBOLS = Stream.concat(
                    IntStream.rangeClosed(1, 8).mapToObj(i -> "A" + i),
                    Stream.of("B C D E F G J K L M N P Q R S T U H V W Y".split(" ")))
            .toList();

    /** Load indices run from 0 to 279 (ISO 4000-1; from memory). */
    private static final int LAST_LOAD_INDEX = 279;

    private final ComplaintBook complaints;

    Plausibility(ComplaintBook complaints) {
        this.complaints = complaints;
    }

    void examine(Job job) {
        if (job.vehicle() != null) {
            vehicle(job.vehicle());
        }
        if (job.weighings() != null) {
            weighing("weighings.as-received", job.weighings().asReceived());
            weighing("weighings.as-delivered", job.weighings().asDelivered());
        }
        job.parts().forEach(this::protection);
        for (Link link : job.links()) {
            if (link.size() != null && ConductorSize.of(link.size()).isEmpty()) {
                complaints.add(
                        "links[" + link.id() + "].size",
                        Quoted.of(link.size())
                                + " is no size of a conductor; write it as marked, such as 50 mm², 1/0 AWG or 250 kcmil");
            }
        }
        for (Instrument instrument : job.instruments()) {
            if (instrument.fixed() != null && instrument.fixed().unit().text().isEmpty()) {
                complaints.add(
                        "instruments[" + instrument.id() + "].fixed",
                        "`" + instrument.fixed() + "` has no unit; write a number and its unit, such as 0.5 kg");
            }
            if (instrument.fixed() != null && instrument.fixed().number() == 0) {
                complaints.add(
                        "instruments[" + instrument.id() + "].fixed",
                        "no instrument is without error; write its limit of error or leave the key out");
            }
        }
    }

    private void protection(Part part) {
        String path = "parts[" + part.id() + "].";
        if (part.enclosure() != null) {
            ipCode(path + "enclosure.protection", part.enclosure().protection());
            ipCode(path + "enclosure.open-protection", part.enclosure().openProtection());
        }
        for (Connector connector : part.connectors()) {
            ipCode(path + "connectors[" + connector.id() + "].mated", connector.mated());
            ipCode(path + "connectors[" + connector.id() + "].open", connector.open());
        }
    }

    private void ipCode(String path, @Nullable String code) {
        if (code != null && IpCode.of(code).isEmpty()) {
            complaints.add(
                    path, Quoted.of(code) + " is no degree of protection; write it as marked, such as IP67 or IPXXB");
        }
    }

    private void vehicle(Vehicle vehicle) {
        length("vehicle.wheelbase", vehicle.wheelbase());
        if (vehicle.ratings() != null) {
            mass("vehicle.ratings.gross", vehicle.ratings().gross());
            mass("vehicle.ratings.front-axle", vehicle.ratings().frontAxle());
            mass("vehicle.ratings.rear-axle", vehicle.ratings().rearAxle());
        }
        if (vehicle.track() != null) {
            length("vehicle.track.front", vehicle.track().front());
            length("vehicle.track.rear", vehicle.track().rear());
        }
        count("vehicle.seats", vehicle.seats(), 1, 100);
        if (vehicle.tyres() != null) {
            tyre("vehicle.tyres.front", vehicle.tyres().front());
            tyre("vehicle.tyres.rear", vehicle.tyres().rear());
        }
    }

    private void tyre(String path, @Nullable Tyre tyre) {
        if (tyre == null) {
            return;
        }
        count(path + ".load-index", tyre.loadIndex(), 0, LAST_LOAD_INDEX);
        String symbol = tyre.speedSymbol();
        if (symbol != null && !SPEED_SYMBOLS.contains(symbol)) {
            String upper = symbol.strip().toUpperCase(Locale.ROOT);
            complaints.add(
                    path + ".speed-symbol",
                    Quoted.of(symbol) + " is no speed symbol"
                            + (SPEED_SYMBOLS.contains(upper)
                                    ? "; did you mean `" + upper + "`?"
                                    : "; write the letter after the load index, one of "
                                            + String.join(" ", SPEED_SYMBOLS)));
        }
    }

    private void weighing(String path, @Nullable Weighing weighing) {
        if (weighing == null) {
            return;
        }
        if (weighing.axles() != null && weighing.corners() != null) {
            complaints.add(path + ".corners", "give corners or axles, not both: axles are the sums of their corners");
        }
        if (weighing.total() != null && (weighing.axles() != null || weighing.corners() != null)) {
            complaints.add(path + ".total", "leave total out where axles or corners are given: it is their sum");
        }
        mass(path + ".total", weighing.total());
        if (weighing.axles() != null) {
            mass(path + ".axles.front", weighing.axles().front());
            mass(path + ".axles.rear", weighing.axles().rear());
        }
        if (weighing.corners() != null) {
            mass(path + ".corners.left-front", weighing.corners().leftFront());
            mass(path + ".corners.right-front", weighing.corners().rightFront());
            mass(path + ".corners.left-rear", weighing.corners().leftRear());
            mass(path + ".corners.right-rear", weighing.corners().rightRear());
        }
        if (weighing.state() != null) {
            count(path + ".state.occupants", weighing.state().occupants(), 0, 100);
        }
    }

    private void mass(String path, @Nullable Quantity mass) {
        if (mass != null && mass.sense() == Sense.VALUE && mass.si() <= 0) {
            complaints.add(path, "`" + mass + "` is no mass of a car; leave the key out where nothing was weighed");
        }
    }

    private void length(String path, @Nullable Quantity length) {
        if (length != null && length.si() <= 0) {
            complaints.add(path, "`" + length + "` is no distance between wheels; write one above zero");
        }
    }

    void count(String path, @Nullable Quantity count, int least, int most) {
        if (count != null && !isCount(count, least, most)) {
            complaints.add(path, "`" + count + "` cannot be; write a whole number from " + least + " to " + most);
        }
    }

    /** A whole number without doubt, within bounds. */
    static boolean isCount(Quantity count, int least, int most) {
        return count.sense() == Sense.VALUE
                && count.half().isEmpty()
                && count.number() == Math.rint(count.number())
                && count.number() >= least
                && count.number() <= most;
    }
}

package kerbfolio.car;

import java.util.List;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Job;
import kerbfolio.job.Ratings;
import kerbfolio.job.Vehicle;
import kerbfolio.job.Weighings;
import org.jspecify.annotations.Nullable;

/** The car of a job, read by every trade: values that several of them need are computed here once. */
public final class Car {
    private final Job job;
    private final Evidence evidence;
    private final Dimensions size;
    private final Scales received;
    private final Scales delivered;
    private final Ledger ledger;
    private final Centre centre;
    private final Laden laden;

    public Car(Job job) {
        this.job = job;
        this.evidence = new Evidence(job);
        Vehicle vehicle = job.vehicle();
        Weighings weighings = job.weighings();
        String by = job.job().preparedBy();
        this.size = new Dimensions(evidence, vehicle, by);
        this.received =
                new Scales(evidence, "as-received", "as received", weighings == null ? null : weighings.asReceived());
        this.delivered = new Scales(
                evidence, "as-delivered", "as delivered", weighings == null ? null : weighings.asDelivered());
        this.ledger = new Ledger(evidence, job, size.wheelbase());
        this.centre = new Centre(evidence, delivered, size, weighings == null ? null : weighings.tilt());
        this.laden = new Laden(evidence, delivered, size, vehicle == null ? List.of() : vehicle.load(), by);
    }

    public Job job() {
        return job;
    }

    public Evidence evidence() {
        return evidence;
    }

    public Dimensions size() {
        return size;
    }

    public Scales received() {
        return received;
    }

    public Scales delivered() {
        return delivered;
    }

    public Ledger ledger() {
        return ledger;
    }

    public Centre centre() {
        return centre;
    }

    /** Centre of gravity along the car as it was received. */
    public Working centreAlongReceived() {
        return Centre.along(received, size);
    }

    public Laden laden() {
        return laden;
    }

    /** Permitted gross mass, as a plate or paper states it. */
    public Term grossRating() {
        Ratings ratings = ratings();
        return evidence.stated(
                "vehicle.ratings.gross",
                "permitted gross mass",
                "kg",
                ratings == null ? null : ratings.gross(),
                ratings == null ? null : ratings.from());
    }

    /** Permitted mass of an axle, as a plate or paper states it. */
    public Term rating(Axle axle) {
        Ratings ratings = ratings();
        var quantity = ratings == null ? null : axle == Axle.FRONT ? ratings.frontAxle() : ratings.rearAxle();
        return evidence.stated(
                "vehicle.ratings." + axle.key() + "-axle",
                "permitted mass of the " + axle,
                "kg",
                quantity,
                ratings == null ? null : ratings.from());
    }

    private @Nullable Ratings ratings() {
        Vehicle vehicle = job.vehicle();
        return vehicle == null ? null : vehicle.ratings();
    }
}

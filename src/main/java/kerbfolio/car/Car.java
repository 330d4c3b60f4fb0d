package kerbfolio.car;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Job;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.job.Ratings;
import kerbfolio.job.Vehicle;
import kerbfolio.job.Weighings;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** The car of a job, read by every trade: values that several of them need are computed here once. */
public final class Car {
    /** What the scales say changed. */
    static final Formula CHANGE = Formula.of("Delta_s = m_1 - m_0")
            .giving("change by the scales", "kg")
            .with("m_1", "as delivered", "kg")
            .with("m_0", "as received", "kg")
            .from(Source.STATICS.clause("conservation of mass"))
            .build();

    private final Job job;
    private final Evidence evidence;
    private final Dimensions size;
    private final Scales received;
    private final Scales delivered;
    private final Ledger ledger;
    private final Centre centre;
    private final Laden laden;
    private final Working change;
    private final Working frontChange;
    private final Working rearChange;
    private final Suspension frontSuspension;
    private final Suspension rearSuspension;
    private final Circuit circuit;
    private final TractionPack pack;
    private final Map<Circuit.Bus, Capacitors> capacitors = new HashMap<>();
    private final Map<Term, List<Discharge>> discharges = new HashMap<>();
    private final Filling filling;
    private final Charging charging;
    private final Guards guards;
    private final Working prospectiveCurrent;

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
        this.change = change("whole car", received.total(), delivered.total());
        this.frontChange = change(Axle.FRONT.toString(), received.axle(Axle.FRONT), delivered.axle(Axle.FRONT));
        this.rearChange = change(Axle.REAR.toString(), received.axle(Axle.REAR), delivered.axle(Axle.REAR));
        this.frontSuspension = new Suspension(evidence, vehicle, Axle.FRONT);
        this.rearSuspension = new Suspension(evidence, vehicle, Axle.REAR);
        this.circuit = new Circuit(job);
        this.pack = new TractionPack(evidence, job.pack());
        this.filling = new Filling(evidence, job.pack(), circuit, this::capacitors);
        this.charging = new Charging(evidence, job);
        this.guards = new Guards(circuit);
        this.prospectiveCurrent = ProspectiveCurrent.of(pack, circuit, this::conductor);
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

    /** Centre of gravity across the car as it was received. */
    public Working centreAcrossReceived() {
        return Centre.across(received, size);
    }

    /** What the scales say the conversion did to the whole car. */
    public Working change() {
        return change;
    }

    /** What the scales say the conversion did to an axle. */
    public Working change(Axle axle) {
        return axle == Axle.FRONT ? frontChange : rearChange;
    }

    /** What the scales say the conversion did to a wheel. */
    public Working change(Corner corner) {
        return change(corner + " wheel", received.corner(corner), delivered.corner(corner));
    }

    private static Working change(String what, Term before, Term after) {
        return Working.fill(CHANGE)
                .named("change of the " + what + " by the scales")
                .put("m_1", after)
                .put("m_0", before)
                .work();
    }

    /** Top speed with the settings in force, as the shop states it. */
    public Term topSpeed() {
        Vehicle vehicle = job.vehicle();
        return evidence.stated(
                "vehicle.top-speed",
                "top speed",
                "km/h",
                vehicle == null ? null : vehicle.topSpeed(),
                job.job().preparedBy());
    }

    public Laden laden() {
        return laden;
    }

    public Suspension suspension(Axle axle) {
        return axle == Axle.FRONT ? frontSuspension : rearSuspension;
    }

    /** The direct-current circuit as recorded. */
    public Circuit circuit() {
        return circuit;
    }

    public TractionPack pack() {
        return pack;
    }

    /** What may stay live with some parts open. */
    public LiveParts liveParts(Collection<String> open) {
        return new LiveParts(circuit, pack, open);
    }

    /** What may stay live with every service disconnect out. */
    public LiveParts madeDead() {
        return liveParts(circuit.disconnects().stream().map(Part::id).toList());
    }

    /** The capacitors of a bus taken together. */
    public Capacitors capacitors(Circuit.Bus bus) {
        return capacitors.computeIfAbsent(bus, fresh -> new Capacitors(evidence, fresh));
    }

    /** How long each bus stays above a voltage once the disconnects are out, computed and as read. */
    public List<Discharge> discharges(Term limit) {
        return discharges.computeIfAbsent(limit, this::discharged);
    }

    private List<Discharge> discharged(Term limit) {
        List<Discharge.Reading> readings = decayReadings(limit);
        return Discharge.buses(circuit).stream()
                .map(bus -> new Discharge(
                        bus,
                        capacitors(bus).decay(pack.highestVoltage(), limit),
                        readings.stream()
                                .filter(reading -> bus.has(reading.of()))
                                .toList()))
                .toList();
    }

    /** Every decay somebody read, brought to the time from the highest working voltage down to a limit. */
    public List<Discharge.Reading> decayReadings(Term limit) {
        return Discharge.readings(job, evidence, pack.highestVoltage(), limit);
    }

    /** How long to wait before the car is proved dead at a voltage. */
    public Wait waitFor(Term limit) {
        return Wait.of(job.parts(), evidence, discharges(limit));
    }

    /** How the bus is filled before the main contactor closes. */
    public Filling filling() {
        return filling;
    }

    /** What is known of a charge at the inlet. */
    public Charging charging() {
        return charging;
    }

    /** The electrical ratings of a part. */
    public Nameplate nameplate(Part part) {
        return new Nameplate(evidence, part);
    }

    public FusePlate fuse(Part part) {
        return new FusePlate(evidence, part);
    }

    public ContactorPlate contactor(Part part) {
        return new ContactorPlate(evidence, part);
    }

    public MotorPlate motor(Part part) {
        return new MotorPlate(evidence, part);
    }

    public Conductor conductor(Link link) {
        return new Conductor(evidence, link);
    }

    /** Which fuse stands before which cable and which box of cells. */
    public Guards guards() {
        return guards;
    }

    /** What a short circuit draws, at most. */
    public Working prospectiveCurrent() {
        return prospectiveCurrent;
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

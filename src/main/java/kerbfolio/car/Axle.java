package kerbfolio.car;

/** One of the two axles. */
public enum Axle {
    FRONT("front axle"),
    REAR("rear axle");

    private final String words;

    Axle(String words) {
        this.words = words;
    }

    /** The key it stands under in the job file. */
    public String key() {
        return this == FRONT ? "front" : "rear";
    }

    @Override
    public String toString() {
        return words;
    }
}

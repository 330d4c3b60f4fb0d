package kerbfolio.job;

/** Where in the car something sits, as far as it matters who can touch it. */
public enum Place {
    CABIN("cabin"),
    LUGGAGE("luggage"),
    ENGINE_BAY("engine-bay"),
    UNDERFLOOR("underfloor"),
    OUTSIDE("outside");

    private final String key;

    Place(String key) {
        this.key = key;
    }

    /** Whether it lies in the space for people or their luggage. */
    public boolean isInside() {
        return this == CABIN || this == LUGGAGE;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}

package kerbfolio.car;

/** One of the four wheels; left as seen from the driver's seat. */
public enum Corner {
    LEFT_FRONT("left front", Axle.FRONT),
    RIGHT_FRONT("right front", Axle.FRONT),
    LEFT_REAR("left rear", Axle.REAR),
    RIGHT_REAR("right rear", Axle.REAR);

    private final String words;
    private final Axle axle;

    Corner(String words, Axle axle) {
        this.words = words;
        this.axle = axle;
    }

    public Axle axle() {
        return axle;
    }

    /** The key it stands under in the job file. */
    public String key() {
        return words.replace(' ', '-');
    }

    @Override
    public String toString() {
        return words;
    }
}

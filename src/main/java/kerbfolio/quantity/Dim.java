package kerbfolio.quantity;

/**
 * The dimension of a quantity, as exponents of five SI base units, counted in halves: the adiabatic constant of a
 * cable is in A·s^0.5/mm², so whole exponents are not enough.
 *
 * @param mass twice the exponent of kg
 * @param length twice the exponent of m
 * @param time twice the exponent of s
 * @param current twice the exponent of A
 * @param temperature twice the exponent of K
 */
public record Dim(int mass, int length, int time, int current, int temperature) {
    public static final Dim NONE = new Dim(0, 0, 0, 0, 0);

    private static final String[] BASE = {"kg", "m", "s", "A", "K"};

    public Dim times(Dim other) {
        return new Dim(
                mass + other.mass,
                length + other.length,
                time + other.time,
                current + other.current,
                temperature + other.temperature);
    }

    public Dim over(Dim other) {
        return times(other.inverse());
    }

    private Dim inverse() {
        return new Dim(-mass, -length, -time, -current, -temperature);
    }

    /**
     * This dimension raised to a power.
     *
     * @throws ArithmeticException if an exponent would be finer than one half
     */
    public Dim power(double power) {
        return new Dim(
                half(mass * power),
                half(length * power),
                half(time * power),
                half(current * power),
                half(temperature * power));
    }

    private static int half(double exponent) {
        if (exponent != Math.rint(exponent)) {
            throw new ArithmeticException("an exponent finer than one half");
        }
        return (int) exponent;
    }

    /** The coherent SI unit in base units, e.g. {@code kg·m²/s²}; empty for a bare number. */
    @Override
    public String toString() {
        int[] halves = {mass, length, time, current, temperature};
        var above = new StringBuilder();
        var below = new StringBuilder();
        for (int i = 0; i < halves.length; i++) {
            if (halves[i] != 0) {
                var side = halves[i] > 0 ? above : below;
                side.append(side.isEmpty() ? "" : "·").append(BASE[i]).append(exponent(Math.abs(halves[i])));
            }
        }
        if (below.isEmpty()) {
            return above.toString();
        }
        return (above.isEmpty() ? "1" : above) + "/" + (below.indexOf("·") < 0 ? below : "(" + below + ")");
    }

    private static String exponent(int halves) {
        return switch (halves) {
            case 2 -> "";
            case 4 -> "²";
            case 6 -> "³";
            case 8 -> "⁴";
            default -> "^" + (halves % 2 == 0 ? String.valueOf(halves / 2) : String.valueOf(halves / 2.0));
        };
    }
}

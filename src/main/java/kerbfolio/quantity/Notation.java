package kerbfolio.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How numbers stand on paper: decimal point, a true minus sign, no exponent, no more digits than are known. */
public final class Notation {
    private static final int SIGNIFICANT = 4;
    private static final double DUST = 1e-9;

    private Notation() {}

    /** A number as short as it can be without losing anything. */
    public static String plain(double number) {
        if (number == Math.rint(number) && Math.abs(number) < 1e15) {
            return String.valueOf((long) number);
        }
        return new BigDecimal(String.valueOf(number)).stripTrailingZeros().toPlainString();
    }

    /** A number rounded to so many decimals, in the direction asked for. */
    public static String fixed(double number, int decimals, RoundingMode mode) {
        // Neither 0.1 + 0.2 may be rounded up to 0.4, nor a difference of 1e-16 to 0.01: what lies past the twelfth
        // digit,
        // or far below the last decimal any page shows, is no digit of the result.
        var digits =
                new BigDecimal(Math.abs(number) < DUST ? 0 : number).round(new MathContext(12, RoundingMode.HALF_EVEN));
        BigDecimal rounded = digits.setScale(decimals, mode);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString().replace('-', '\u2212');
    }

    /** A number without the dust of binary arithmetic: twelve digits, and nothing below what any page shows. */
    public static double settled(double number) {
        return Math.abs(number) < DUST
                ? 0
                : new BigDecimal(number)
                        .round(new MathContext(12, RoundingMode.HALF_EVEN))
                        .doubleValue();
    }

    /** Decimals that show an uncertainty to two significant digits, within what a shop reads: none to six. */
    public static int decimalsFor(double uncertainty) {
        if (uncertainty <= 0 || !Double.isFinite(uncertainty)) {
            return -1;
        }
        // 2 · 0.05 may come out a hair below 0.1, which is no third digit.
        var digits = new BigDecimal(uncertainty).round(new MathContext(12, RoundingMode.HALF_EVEN));
        return clamp(2 - digits.precision() + digits.scale());
    }

    /** Decimals that show a number without a known uncertainty to four significant digits. */
    public static int decimalsOf(double number) {
        if (Math.abs(number) < DUST || !Double.isFinite(number)) {
            return 0;
        }
        int wanted = clamp(SIGNIFICANT - 1 - (int) Math.floor(Math.log10(Math.abs(number))));
        int needed = Math.max(
                0,
                new BigDecimal(number)
                        .round(new MathContext(12, RoundingMode.HALF_EVEN))
                        .stripTrailingZeros()
                        .scale());
        return Math.min(wanted, needed);
    }

    private static int clamp(int decimals) {
        return Math.max(0, Math.min(6, decimals));
    }
}

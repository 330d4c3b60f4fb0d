package kerbfolio.formula;

import static kerbfolio.formula.Trial.exact;
import static kerbfolio.formula.Trial.formula;
import static kerbfolio.formula.Trial.measured;
import static kerbfolio.formula.Trial.moved;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Uncertainty by causes against values from outside. */
class DoubtTest {
    private static double u(Working working) {
        return working.unit().differenceFromSi(working.amount().orElseThrow().standardUncertainty());
    }

    private static double effect(Working working, String cause) {
        return working.unit()
                .differenceFromSi(working.amount().orElseThrow().effects().get(cause));
    }

    private static double after(String figure) {
        return Double.parseDouble(figure);
    }

    /** JCGM 100:2008, 5.2.2, example: ten 1000 Ω resistors, each against one standard of u = 100 mΩ: u = 1 Ω. */
    @Test
    void tenResistorsAgainstOneStandardMoveTogether() {
        assertEquals(1.0, u(tenResistors(false)), 0.05);
    }

    /** The same, 5.2.2: 0.32 Ω would be right only if the ten calibrations were independent. */
    @Test
    void tenResistorsAgainstTenStandardsDoNot() {
        assertEquals(0.32, u(tenResistors(true)), 0.005);
    }

    private static Working tenResistors(boolean independent) {
        var resistors = new ArrayList<Term>();
        for (int i = 0; i < 10; i++) {
            resistors.add(measured("1 kΩ", "standard" + (independent ? i : ""), "0.1 Ω"));
        }
        return Working.fill(formula("sum(R)", "Ω", "R[] [Ω]"))
                .each("R", resistors)
                .work();
    }

    /**
     * JCGM 100:2008, H.1, end gauge: inputs of table H.1 and H.1.3, result 50.000 838 mm, contributions 25, 9.7, 2.9 and
     * 16.6 nm, u_c = 32 nm (31.7 from these inputs). The mean temperature and the standard's
     * coefficient have no effect in first order, and a move that is not centred would invent one.
     */
    @Test
    void theEndGaugeOfTheGuideComesOutAsPrinted() {
        Working length = endGauge();
        assertEquals(50.000838, Trial.in(length), 0.5e-6);
        assertEquals(32e-6, u(length), 0.5e-6);
        assertEquals(25e-6, effect(length, "l_s"), 0.5e-6);
        assertEquals(
                9.7e-6,
                Math.hypot(
                        Math.hypot(effect(length, "d random"), effect(length, "comparator random")),
                        effect(length, "comparator systematic")),
                0.05e-6);
        assertEquals(2.9e-6, Math.abs(effect(length, "delta_alpha")), 0.05e-6);
        assertEquals(16.6e-6, Math.abs(effect(length, "delta_theta")), 0.05e-6);
        assertEquals(0, effect(length, "alpha_s"), 1e-18);
        assertEquals(0, effect(length, "theta"), 1e-18);
        assertEquals("l_s", length.budget().get(0).cause());
        assertEquals("delta_theta", length.budget().get(1).cause());
    }

    private static Working endGauge() {
        Formula length = formula(
                "l_s + d - l_s*(delta_alpha*theta + alpha_s*delta_theta)",
                "mm",
                "l_s [mm]",
                "d [mm]",
                "delta_alpha [1/K]",
                "theta [K]",
                "alpha_s [1/K]",
                "delta_theta [K]");
        length.checkUnits();
        return Working.fill(length)
                .put("l_s", measured("50.000623 mm", "l_s", "25e-6 mm"))
                .put(
                        "d",
                        moved(
                                "215e-6 mm",
                                Map.of(
                                        "d random",
                                        5.8e-9,
                                        "comparator random",
                                        3.9e-9,
                                        "comparator systematic",
                                        6.7e-9)))
                .put("delta_alpha", moved("0 1/K", Map.of("delta_alpha", 1e-6 / Math.sqrt(3))))
                .put("theta", measured("-0.1 K", "theta", "0.41 K"))
                .put("alpha_s", moved("11.5e-6 1/K", Map.of("alpha_s", 2e-6 / Math.sqrt(3))))
                .put("delta_theta", moved("0 K", Map.of("delta_theta", 0.05 / Math.sqrt(3))))
                .work();
    }

    /**
     * Height of the centre of gravity by tilt weighing, h = r + L·Δ/(m·tan θ), tan θ = H/√(L² − H²): the derivatives
     * worked by hand give 0.35, 0.42, 1.65, 12.38 and 2.00 mm and u = 12.7 mm at h = 0.5654 m.
     */
    @Test
    void eachReadingOfATiltWeighingMovesTheHeightAsItsDerivativeSays() {
        Formula height =
                formula("r + L*sqrt(L^2 - H^2)*Delta/(m*H)", "mm", "r [mm]", "L [m]", "H [m]", "Delta [kg]", "m [kg]");
        height.checkUnits();
        Working h = Working.fill(height)
                .put("m", measured("1500 kg", "m", "2 kg"))
                .put("L", measured("2.6 m", "L", "0.002 m"))
                .put("H", measured("0.5 m", "H", "0.003 m"))
                .put("Delta", measured("30 kg", "Delta", "1.4 kg"))
                .put("r", measured("0.30 m", "r", "0.002 m"))
                .work();
        assertEquals(565.4, Trial.in(h), 0.05);
        assertEquals(0.35, Math.abs(effect(h, "m")), 0.005);
        assertEquals(0.42, Math.abs(effect(h, "L")), 0.005);
        assertEquals(1.65, Math.abs(effect(h, "H")), 0.005);
        assertEquals(12.38, Math.abs(effect(h, "Delta")), 0.005);
        assertEquals(2.00, Math.abs(effect(h, "r")), 0.005);
        assertEquals(12.7, u(h), 0.05);
        assertEquals(
                List.of("Delta", "r", "H", "L", "m"),
                h.budget().stream().map(Share::cause).toList());
    }

    /** R_0·U·(1/V' − 1/V) is of degree zero in the meter's gain, so one meter's gain cancels; three meters' do not. */
    @Test
    void theGainOfOneVoltmeterCancelsFromAnIsolationReading() {
        Working one = isolation("gain", "gain", "gain");
        assertEquals(0, u(one) / Trial.in(one), 1e-9);
        Working three = isolation("gain 1", "gain 2", "gain 3");
        // By hand: 0.5 % of U times the difference, of 1/V' and of 1/V.
        double a = 400.0 / 177;
        double b = 400.0 / 264;
        double expected = 200e3 * 0.005 * Math.sqrt((a - b) * (a - b) + a * a + b * b);
        assertEquals(expected, u(three), 1e-4 * expected);
    }

    private static Working isolation(String first, String second, String third) {
        return Working.fill(formula("R_0*U*(1/V_1' - 1/V_1)", "Ω", "R_0 [kΩ]", "U [V]", "V_1' [V]", "V_1 [V]"))
                .put("R_0", exact("200 kΩ"))
                .put("U", gained("400", first))
                .put("V_1'", gained("177", second))
                .put("V_1", gained("264", third))
                .work();
    }

    private static Known gained(String volts, String cause) {
        return moved(volts + " V", Map.of(cause, 0.005 * after(volts)));
    }

    /** One reference of 0.2 % behind four pads: by hand 0.002·Σm together, 0.002·√Σm² if each had its own. */
    @Test
    void padsCalibratedAgainstOneReferenceShareItsError() {
        double together = 0.002 * (460 + 450 + 310 + 290);
        double apart = 0.002 * Math.sqrt(460 * 460 + 450 * 450 + 310 * 310 + 290 * 290);
        assertEquals(together, u(total("reference", "reference", "reference", "reference")), 1e-9);
        assertEquals(apart, u(total("1", "2", "3", "4")), 1e-9);
    }

    /** A share is a ratio of masses off the same reference: its error cancels, by hand and whatever the masses. */
    @Test
    void theFrontShareIsFreeOfTheirReference() {
        Formula share = formula("m_F/m", "1", "m_F [kg]", "m [kg]");
        Working total = total("reference", "reference", "reference", "reference");
        Working front = Working.fill(formula("sum(m)", "kg", "m[] [kg]"))
                .each("m", List.of(pad("460", "reference"), pad("450", "reference")))
                .work();
        Working shared = Working.fill(share).put("m_F", front).put("m", total).work();
        assertEquals(910.0 / 1510, Trial.in(shared), 1e-12);
        assertEquals(0, u(shared), 1e-9);
    }

    /** The change of mass by the same pads keeps 0.2 % of the change alone: 0.3 kg of 150 kg, by hand. */
    @Test
    void aChangeOfMassByTheSamePadsKeepsTheErrorOfTheChangeAlone() {
        Formula change = formula("m_1 - m_0", "kg", "m_1 [kg]", "m_0 [kg]");
        Working same = Working.fill(change)
                .put("m_1", pad("1510", "reference"))
                .put("m_0", pad("1360", "reference"))
                .work();
        assertEquals(0.3, u(same), 1e-9);
        Working other = Working.fill(change)
                .put("m_1", pad("1510", "ours"))
                .put("m_0", pad("1360", "theirs"))
                .work();
        assertEquals(0.002 * Math.hypot(1510, 1360), u(other), 1e-9);
    }

    private static Working total(String... references) {
        String[] masses = {"460", "450", "310", "290"};
        var pads = new ArrayList<Term>();
        for (int i = 0; i < masses.length; i++) {
            pads.add(pad(masses[i], references[i]));
        }
        return Working.fill(formula("sum(m)", "kg", "m[] [kg]")).each("m", pads).work();
    }

    private static Known pad(String kilograms, String reference) {
        return moved(kilograms + " kg", Map.of(reference, 0.002 * after(kilograms)));
    }

    /** d(x²)/dx = 2x: a symbol used twice moves twice. By hand: 2·3·0.1. */
    @Test
    void aFigureUsedTwiceMovesTwice() {
        Working square = Working.fill(formula("a*a", "1", "a [1]"))
                .put("a", measured("3", "a", "0.1"))
                .work();
        assertEquals(0.6, u(square), 1e-12);
    }
}

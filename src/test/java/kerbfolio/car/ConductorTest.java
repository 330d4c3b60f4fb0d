package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.formula.Term;
import kerbfolio.job.ConductorSize;
import kerbfolio.job.ConductorSize.Scale;
import kerbfolio.job.Link;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductorTest {
    private static Conductor conductor(JobText job) {
        Car car = job.car();
        Link link = car.circuit().links().stream()
                .filter(each -> each.id().equals("c-plus"))
                .findFirst()
                .orElseThrow();
        return car.conductor(link);
    }

    private static JobText marked(String size) {
        return TractionText.sound().alter("links", "c-plus", "70 mm²", size);
    }

    private static double area(double gauge) {
        return Found.value(Conductor.area("", "gauge", new ConductorSize(Scale.GAUGE, gauge, "")));
    }

    /** ASTM B258 through a public chart: diameters 0.0050, 0.1019, 0.3648, 0.4600 in; areas by pi/4 of their square. */
    @ParameterizedTest
    @CsvSource({"36, 0.0050, 0.00005", "10, 0.1019, 0.00005", "-1, 0.3648, 0.00005", "-3, 0.4600, 0.00005"})
    void aGaugeIsTheDiameterTheStandardSays(double gauge, double inches, double tolerance) {
        assertEquals(inches, Math.sqrt(area(gauge) * 4 / Math.PI) / 25.4, tolerance);
    }

    /** 4/0 AWG is 107.2 mm²: old wire chart; 250 kcmil is 126.68 mm²: 0.506707 mm² each, worked by hand. */
    @Test
    void gaugesAndMilsComeOutInSquareMillimetres() {
        assertEquals(107.2, Found.value(conductor(marked("4/0 AWG")).area()), 0.05);
        assertEquals(126.68, Found.value(conductor(marked("250 kcmil")).area()), 0.005);
        assertEquals(50, Found.value(conductor(marked("50 mm²")).area()), 1e-9);
    }

    /** The ratio of diameters from gauge to gauge is 1.1229322 (ASTM B258). */
    @Test
    void fromGaugeToGaugeTheDiameterGrowsByOneRatio() {
        var random = new Random(60228);
        for (int i = 0; i < 50; i++) {
            int gauge = random.nextInt(43) - 3;
            assertEquals(1.1229322, Math.sqrt(area(gauge) / area(gauge + 1)), 1e-7);
        }
    }

    /** IEC 60228 class 5, plain copper, as three public tables print it. */
    @ParameterizedTest
    @CsvSource({"16 mm², 1.21", "35 mm², 0.554", "50 mm², 0.386", "95 mm², 0.206"})
    void theTableGivesTheLargestResistance(String size, double perKilometre) {
        assertEquals(perKilometre, atTwenty(marked(size)), 1e-9);
    }

    /** 1 m at 20 °C in mΩ is Ω/km. */
    private static double atTwenty(JobText job) {
        Conductor conductor = conductor(job);
        return Found.value(conductor.resistance(Evidence.solved("", "temperature", 20, "°C", "")));
    }

    @Test
    void aSizeBetweenTwoRowsCountsAsTheSmaller() {
        assertEquals(0.386, atTwenty(marked("1/0 AWG")), 1e-9);
        assertEquals(0.554, atTwenty(marked("1 AWG")), 1e-9);
        Term largest = conductor(marked("1/0 AWG"))
                .resistance(Evidence.solved("", "temperature", 20, "°C", ""))
                .inputs()
                .get("r")
                .get(0);
        assertTrue(largest.name().contains("taken as 50 mm²"), largest.name());
    }

    /** 1.2751 times at 90 °C, 1.3340 at 105 °C: 1 + 0.00393 (T - 20), worked by hand. */
    @Test
    void copperGrowsWorseAsItGrowsHot() {
        Conductor conductor = conductor(marked("50 mm²"));
        assertEquals(0.386 * 1.2751, Found.value(conductor.resistance(Evidence.solved("", "t", 90, "°C", ""))), 1e-5);
        assertEquals(0.386 * 1.3340, Found.value(conductor.resistance(Evidence.solved("", "t", 105, "°C", ""))), 1e-4);
    }

    /** Tinned strands: 35 mm² 0.565 Ω/km (IEC 60228, from memory); aluminium is no class 5 conductor of that table. */
    @Test
    void whatIsNotPlainCopperHasAnotherColumnOrNone() {
        assertEquals(0.565, atTwenty(marked("35 mm²").alter("links", "c-plus", "copper", "tinned-copper")), 1e-9);
        Term aluminium = conductor(marked("35 mm²").alter("links", "c-plus", "copper", "aluminium"))
                .resistance(Evidence.solved("", "t", 20, "°C", ""));
        assertTrue(aluminium.amount().isEmpty());
        assertTrue(aluminium.origin().contains("not for aluminium"), aluminium.origin());
        Conductor unknown = conductor(marked("35 mm²").alter("links", "c-plus", "metal: copper, ", ""));
        Term copper = unknown.resistance(Evidence.solved("", "t", 20, "°C", ""));
        assertEquals(0.554, Found.value(copper), 1e-9);
        assertTrue(copper.reservations().toString().contains("taken as plain copper"));
    }

    /** 70 mm² of solid copper: 1000/58/70 = 0.2463 mΩ a metre, below the 0.272 of the strands. */
    @Test
    void theLeastResistanceIsThatOfSolidCopper() {
        assertEquals(0.2463, Found.value(conductor(TractionText.sound()).leastResistance()), 5e-5);
    }

    /** k 115 for PVC from 70 °C, 143 for cross-linked from 90 °C (IEC 60364-5-54); 100 for PVC from 90 °C, from memory. */
    @ParameterizedTest
    @CsvSource({"pvc, 70 °C, 115", "xlpe, 90 °C, 143", "pvc, 90 °C, 100"})
    void theShortCircuitFactorIsThatOfTheStandard(String insulation, String limit, double k) {
        var job = TractionText.sound()
                .alter("links", "c-plus", "silicone", insulation)
                .alter("links", "c-plus", "150 °C", limit);
        assertEquals(k, Found.value(conductor(job).withstand()), 0.5);
    }

    @Test
    void whatIsNotWrittenIsNotGuessed() {
        Conductor bare = conductor(TractionText.sound()
                .alter("links", "c-plus", "size: 70 mm², ", "")
                .alter("links", "c-plus", "metal: copper, ", "")
                .alter("links", "c-plus", "insulation: silicone, ", "")
                .alter("links", "c-plus", "length: 1 m, ", ""));
        assertEquals(List.of("links[c-plus].length", "links[c-plus].size"), paths(bare.leastResistance()));
        assertEquals(List.of("links[c-plus].metal"), paths(bare.withstand()));
        assertTrue(
                bare.resistance(Evidence.solved("", "t", 20, "°C", "")).amount().isEmpty());
    }

    private static List<String> paths(Term term) {
        return term.missing().stream().map(absent -> absent.path()).toList();
    }
}

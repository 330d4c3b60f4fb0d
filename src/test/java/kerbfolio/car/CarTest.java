package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Term;
import org.junit.jupiter.api.Test;

class CarTest {
    private final Car car = JobText.onFourCorners().car();

    /** By hand from the wheels: 750 + 650 kg before, 814 + 786 kg after, left front 400 and 420 kg. */
    @Test
    void whatTheScalesSayChangedAddsUp() {
        assertEquals(200, Found.value(car.change()), 1e-9);
        assertEquals(64, Found.value(car.change(Axle.FRONT)), 1e-9);
        assertEquals(136, Found.value(car.change(Axle.REAR)), 1e-9);
        assertEquals(20, Found.value(car.change(Corner.LEFT_FRONT)), 1e-9);
    }

    @Test
    void whatAPlateSaysIsStatedByIt() {
        assertEquals(1700, Found.value(car.grossRating()), 0);
        assertEquals(850, Found.value(car.rating(Axle.FRONT)), 0);
        assertEquals(900, Found.value(car.rating(Axle.REAR)), 0);
        assertEquals(Basis.STATED, car.grossRating().basis());
        assertEquals("plate", car.grossRating().origin());
    }

    @Test
    void whatTheShopSaysIsStatedByWhoPreparedTheRecord() {
        assertEquals("A. Tester", car.size().wheelbase().origin());
        assertEquals("A. Tester", car.topSpeed().origin());
        assertEquals(1400, Found.value(car.size().track(Axle.FRONT)), 0);
        assertEquals(1440, Found.value(car.size().track(Axle.REAR)), 0);
    }

    @Test
    void aJobThatSaysNothingHasACarOfWhichNothingIsKnown() {
        Car blank = JobText.blank().car();
        for (Term term : new Term[] {
            blank.grossRating(),
            blank.rating(Axle.REAR),
            blank.topSpeed(),
            blank.size().wheelbase(),
            blank.size().track(Axle.FRONT),
            blank.change(),
            blank.laden().total(),
            blank.centre().height(),
            blank.centreAlongReceived()
        }) {
            assertEquals(Basis.ABSENT, term.basis(), term.name());
            assertTrue(term.amount().isEmpty(), term.name());
            for (Absent absent : term.missing()) {
                assertEquals("not recorded", absent.reason(), absent.path());
            }
        }
    }
}

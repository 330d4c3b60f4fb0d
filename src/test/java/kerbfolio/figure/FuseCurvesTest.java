package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

class FuseCurvesTest {
    private static final String CURVE = "curve: [ { current: 700 A, time: 2 s }, { current: 6000 A, time: 1 ms } ]";

    private static Figure curves(JobText job) {
        return Drawn.figure(job.dossier(), "fuse-curves");
    }

    private static String said(JobText job) {
        return curves(job).alternative().replace('\u00a0', ' ');
    }

    @Test
    void theCurveIsSaidAsItsMakerDrawsIt() {
        String said = said(TractionText.sound());
        assertTrue(said.contains("front fuse: melts at 700 A in 2 s, 6000 A in 1 ms"), said);
    }

    /** 6 mm² behind the fuse of the heater, although the fuses of the boxes stand before that cable too. */
    @Test
    void aFuseIsShownWithTheSmallestCableOfItsOwn() {
        String said = said(TractionText.sound());
        String melts =
                " fuse: melts at 700 A in 2 s, 6000 A in 1 ms; by a short circuit in 0.001 s; smallest cable it guards: ";
        assertTrue(said.contains("heater" + melts + "c-heater-plus"), said);
        assertTrue(said.contains("front" + melts + "c-minus"), said);
    }

    @Test
    void whatTheContactorsBreakIsDrawnOnce() {
        List<String> texts = Drawn.of(curves(TractionText.sound())).texts();
        assertTrue(texts.contains("contactor breaks 1000 A"), texts.toString());
        assertTrue(texts.stream()
                        .filter(text -> text.startsWith("contactor breaks"))
                        .count()
                == 1);
    }

    @Test
    void everyWordStaysInsideAndApart() {
        var drawn = Drawn.of(curves(TractionText.sound()));
        List<Drawn.Words> words = drawn.words();
        IntStream.range(0, words.size()).forEach(i -> {
            assertTrue(
                    words.get(i).room().getMaxX() < drawn.figure().width() + 0.5,
                    words.get(i).toString());
            IntStream.range(0, i)
                    .forEach(j -> assertFalse(
                            words.get(i).room().intersects(words.get(j).room()), words.get(i) + " on " + words.get(j)));
        });
    }

    @Test
    void withoutACurveThereIsNoDrawing() {
        JobText job = TractionText.sound();
        List.of("front-fuse", "rear-fuse", "heater-fuse", "aux-fuse")
                .forEach(fuse -> job.alter("parts", fuse, ", " + CURVE, ""));
        assertTrue(Figures.of(job.dossier()).stream()
                .noneMatch(figure -> figure.id().equals("fuse-curves")));
    }
}

package kerbfolio.figure;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kerbfolio.car.Car;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSets;
import kerbfolio.checks.CheckList;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaints;
import kerbfolio.release.Release;

/** The words of a figure as it sets them, each with the room it takes on the figure. */
record Drawn(Figure figure, List<Words> words) {
    /** Heights of capitals and of tails below the base line, as shares of the type size. */
    private static final double CAPITAL = 0.72;

    private static final double TAIL = 0.2;

    /** One line of words. */
    record Words(String text, Rectangle2D room, float size) {}

    static Drawn of(Figure figure) {
        return of(figure, figure.width(), figure.height());
    }

    static Drawn of(Figure figure, double width, double height) {
        var words = new ArrayList<Words>();
        var measures = new Outlines();
        var recorder = new Letters() {
            @Override
            public double width(Graphics2D canvas, String text, Font font) {
                return measures.width(canvas, text, font);
            }

            @Override
            public void set(Graphics2D canvas, String text, double x, double y, Font font) {
                double size = font.getSize2D();
                var room = new Rectangle2D.Double(
                        x, y - CAPITAL * size, width(canvas, text, font), (CAPITAL + TAIL) * size);
                AffineTransform place = canvas.getTransform();
                words.add(new Words(
                        text.replace('\u00a0', ' '),
                        place.createTransformedShape(room).getBounds2D(),
                        (float) (size * place.getScaleY())));
            }
        };
        Graphics2D canvas = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        canvas.setRenderingHint(Letters.KEY, recorder);
        figure.draw(canvas, width, height);
        canvas.dispose();
        return new Drawn(figure, List.copyOf(words));
    }

    List<String> texts() {
        return words.stream().map(Words::text).toList();
    }

    /** Whether a figure of the job is drawn, as it is printed elsewhere but for a plus sign or a side. */
    boolean shows(String large) {
        String plain = large.replace('\u00a0', ' ');
        return texts().stream()
                .anyMatch(text -> text.equals(plain) || text.equals("+" + plain) || text.contains(" " + plain));
    }

    static Figure figure(Dossier dossier, String id) {
        return Figures.of(dossier).stream()
                .filter(figure -> figure.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no figure " + id));
    }

    static Dossier sample(String name) {
        try {
            JobFile file = JobFile.read(Path.of("sample-jobs", name + ".yaml"));
            Limits limits = RequirementSets.limits(file);
            var car = new Car(file.job());
            List<Examination> examinations = CheckList.ALL.stream()
                    .map(check -> Examination.of(check, car, limits))
                    .toList();
            return Dossier.of(
                    car,
                    new Release(file.job(), examinations, limits),
                    limits,
                    "Kerbfolio, under test",
                    "no fingerprint");
        } catch (IOException | Complaints e) {
            throw new AssertionError(name, e);
        }
    }
}

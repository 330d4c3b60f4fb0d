package kerbfolio.photo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaints;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrintTest {
    @TempDir
    private Path folder;

    @Test
    void aLargePictureIsReducedAndASmallOneIsLeftAsItIs() throws Exception {
        Print large = Print.of(file("large.jpg", jpeg(picture(2800, 700))));
        assertEquals(1400, large.width());
        assertEquals(350, large.height());
        Print small = Print.of(file("small.png", encoded(picture(300, 200), "png")));
        assertEquals(300, small.width());
        assertEquals(200, small.height());
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(small.jpeg()));
        assertEquals(300, seen.getWidth());
        assertEquals(200, seen.getHeight());
    }

    /** Orientation 6: the first row of the file is the right-hand side of the scene (JEITA CP-3451, 4.6.4 A; from memory). */
    @Test
    void aPictureTakenWithTheCameraOnItsSideStandsUpright() throws Exception {
        byte[] turned = withOrientation(jpeg(picture(300, 200)), 6);
        Print print = Print.of(file("turned.jpg", turned));
        assertEquals(200, print.width());
        assertEquals(300, print.height());
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(print.jpeg()));
        assertTrue(isRed(seen, 180, 20), "the red corner, first row and first column, comes to the top right");
        assertFalse(isRed(seen, 20, 20));
    }

    @Test
    void whatIsTransparentIsWhiteAsThePaperIs() throws Exception {
        Print print =
                Print.of(file("clear.png", encoded(new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB), "png")));
        int seen = ImageIO.read(new ByteArrayInputStream(print.jpeg())).getRGB(20, 20) & 0xFFFFFF;
        assertEquals(0xFFFFFF, seen);
    }

    @Test
    void theSamePictureGivesTheSamePrint() throws Exception {
        Path file = file("same.jpg", jpeg(picture(2000, 1500)));
        assertArrayEquals(Print.of(file).jpeg(), Print.of(file).jpeg());
    }

    @Test
    void thePrintOfAPrintIsThatPrint() throws Exception {
        Print once = Print.of(file("once.jpg", withOrientation(jpeg(picture(2000, 1500)), 6)));
        Print again = Print.of(file("again.jpg", once.jpeg()));
        assertArrayEquals(once.jpeg(), again.jpeg());
        assertEquals(once.height(), again.height());
    }

    /** Where a picture was taken is nobody's affair: what a camera adds does not come into the dossier. */
    @Test
    void whatTheCameraAddedIsLeftOut() throws Exception {
        byte[] small = withOrientation(jpeg(picture(300, 200)), 1);
        assertTrue(new String(small, StandardCharsets.ISO_8859_1).contains("Exif"));
        Print print = Print.of(file("small.jpg", small));
        assertFalse(new String(print.jpeg(), StandardCharsets.ISO_8859_1).contains("Exif"));
    }

    /** What lies behind the end of a picture, or in other colours than paper is told of, does not get in as it is. */
    @Test
    void onlyAPictureAndNothingElseIsTakenAsItIs() throws Exception {
        byte[] plain = jpeg(picture(300, 200));
        assertTrue(Jpeg.isBare(plain));
        byte[] behind = Arrays.copyOf(plain, plain.length + 100_000);
        assertFalse(Jpeg.isBare(behind));
        assertTrue(Print.of(file("behind.jpg", behind)).jpeg().length < 50_000);
        byte[] twice = new byte[2 * plain.length];
        System.arraycopy(plain, 0, twice, 0, plain.length);
        System.arraycopy(plain, 0, twice, plain.length, plain.length);
        assertFalse(Jpeg.isBare(twice));
        byte[] fourColours = plain.clone();
        fourColours[frame(plain) + 9] = 4;
        assertFalse(Jpeg.isBare(fourColours));
    }

    /** Where the baseline frame begins: marker 0xFFC0 (ITU-T T.81, table B.1). */
    private static int frame(byte[] jpeg) {
        int at = 0;
        while ((jpeg[at] & 0xFF) != 0xFF || (jpeg[at + 1] & 0xFF) != 0xC0) {
            at++;
        }
        return at;
    }

    @Test
    void aLineOfDotsIsPrintedToo() throws Exception {
        Print line = Print.of(file("line.png", encoded(picture(20_000, 2), "png")));
        assertEquals(1400, line.width(), 2);
        assertEquals(1, line.height());
        assertEquals(1, Print.of(file("dot.png", encoded(picture(1, 1), "png"))).width());
    }

    @Test
    void aFileThatIsNoPictureIsToldSo() throws Exception {
        assertUnprintable("is no picture; save it as JPEG or PNG", "not at all".getBytes(StandardCharsets.UTF_8));
        assertUnprintable("is no picture; save it as JPEG or PNG", new byte[0]);
        assertUnprintable("is a picture of the kind gif; save it as JPEG or PNG", encoded(picture(20, 20), "gif"));
    }

    @Test
    void aPictureThatBreaksOffIsToldSo() throws Exception {
        byte[] whole = encoded(picture(300, 200), "png");
        assertUnprintable(
                "cannot be read as a picture; save it anew as JPEG or PNG", Arrays.copyOf(whole, whole.length / 2));
        byte[] photo = jpeg(picture(300, 200));
        assertUnprintable("breaks off before its end; copy it anew", Arrays.copyOf(photo, photo.length - 200));
        assertUnprintable("breaks off before its end; copy it anew", Arrays.copyOf(photo, photo.length - 2));
    }

    /** A few bytes that unfold to gigabytes: only the size in the header is looked at. */
    @Test
    void aPictureTooHugeToPrintIsToldItsSize() throws Exception {
        assertUnprintable("has 60000 by 50000 pixels; save a copy of at most 50 million", headerOf(60_000, 50_000));
    }

    @Test
    void everyPhotographThatCannotBePrintedIsToldWithItsLine() throws Exception {
        file("good.jpg", jpeg(picture(20, 20)));
        file("bad.jpg", "text".getBytes(StandardCharsets.UTF_8));
        file("huge.png", headerOf(60_000, 50_000));
        Path job = file("job.yaml", """
                kerbfolio: 1
                job: { number: "1", revision: A, date: 2026-10-16, tier: first, home-set: un-ece }
                photos:
                  - { file: good.jpg }
                  - { file: bad.jpg }
                  - { file: huge.png }
                """.getBytes(StandardCharsets.UTF_8));
        JobFile read = JobFile.read(job);
        var wrong = assertThrows(Complaints.class, () -> Prints.of(read));
        assertEquals(
                List.of(
                        "job.yaml:5:13: photos > entry 2 > file: `bad.jpg` is no picture; save it as JPEG or PNG",
                        "job.yaml:6:13: photos > entry 3 > file: `huge.png` has 60000 by 50000 pixels; save a copy of at"
                                + " most 50 million"),
                wrong.list().stream().map(Object::toString).toList());
    }

    private void assertUnprintable(String reason, byte[] content) throws IOException {
        Path file = file("some.jpg", content);
        assertEquals(
                reason,
                assertThrows(Print.Unprintable.class, () -> Print.of(file)).getMessage());
    }

    private Path file(String name, byte[] content) throws IOException {
        return Files.write(folder.resolve(name), content);
    }

    /** Grey, with a red corner where the first row meets the first column. */
    private static BufferedImage picture(int width, int height) {
        var picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = picture.createGraphics();
        canvas.setColor(Color.GRAY);
        canvas.fillRect(0, 0, width, height);
        canvas.setColor(Color.RED);
        canvas.fillRect(0, 0, width / 4, height / 4);
        canvas.dispose();
        return picture;
    }

    private static boolean isRed(BufferedImage picture, int x, int y) {
        Color seen = new Color(picture.getRGB(x, y));
        return seen.getRed() > 200 && seen.getGreen() < 60;
    }

    private static byte[] jpeg(BufferedImage picture) throws IOException {
        return encoded(picture, "jpg");
    }

    private static byte[] encoded(BufferedImage picture, String format) throws IOException {
        var bytes = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(picture, format, bytes));
        return bytes.toByteArray();
    }

    /** A JPEG as a camera writes it: an EXIF segment, here with nothing but an orientation, in place of the JFIF one. */
    private static byte[] withOrientation(byte[] jpeg, int orientation) {
        int rest = 2 + 2 + (jpeg[4] << 8 | jpeg[5]);
        byte[] exif = {
            (byte) 0xFF,
            (byte) 0xE1,
            0,
            34,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            0x01,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) orientation,
            0,
            0,
            0,
            0,
            0,
            0
        };
        var whole = new ByteArrayOutputStream();
        whole.write(jpeg, 0, 2);
        whole.writeBytes(exif);
        whole.write(jpeg, rest, jpeg.length - rest);
        return whole.toByteArray();
    }

    /** The signature and the first chunk of a PNG (ISO/IEC 15948, 11.2.2), and nothing after them. */
    private static byte[] headerOf(int width, int height) throws IOException {
        var bytes = new ByteArrayOutputStream();
        var out = new DataOutputStream(bytes);
        out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        var chunk = new ByteArrayOutputStream();
        var in = new DataOutputStream(chunk);
        in.writeBytes("IHDR");
        in.writeInt(width);
        in.writeInt(height);
        in.write(new byte[] {8, 2, 0, 0, 0});
        var sum = new CRC32();
        sum.update(chunk.toByteArray());
        out.writeInt(13);
        out.write(chunk.toByteArray());
        out.writeInt((int) sum.getValue());
        return bytes.toByteArray();
    }
}

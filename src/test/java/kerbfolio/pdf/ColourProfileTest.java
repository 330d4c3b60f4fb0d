package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ColourProfileTest {
    private static final ICC_Profile PROFILE = ICC_Profile.getInstance(ColourProfile.sRgb());

    @Test
    void theProfileIsAnRgbDisplayProfileOfVersionTwo() {
        assertEquals(2, PROFILE.getMajorVersion());
        assertEquals(ColorSpace.TYPE_RGB, PROFILE.getColorSpaceType());
        assertEquals(ICC_Profile.CLASS_DISPLAY, PROFILE.getProfileClass());
        assertEquals(3, PROFILE.getNumComponents());
    }

    /** Against another program: the sRGB of the Java runtime, on seeded random colours, to one step of 255. */
    @Test
    void coloursAreThoseOfAnotherSrgb() {
        var ours = new ICC_ColorSpace(PROFILE);
        var chance = new Random(3);
        for (int i = 0; i < 200; i++) {
            float[] colour = {chance.nextFloat(), chance.nextFloat(), chance.nextFloat()};
            float[] seen = ours.toRGB(colour);
            for (int channel = 0; channel < 3; channel++) {
                assertEquals(colour[channel], seen[channel], 1.0 / 255);
            }
        }
    }
}

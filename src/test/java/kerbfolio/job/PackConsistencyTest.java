package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the counts of a pack must be together; ▸ marks where each complaint must point. */
class PackConsistencyTest {
    @TempDir
    private Path folder;

    private Sheet sheet;

    @BeforeEach
    void unfold() {
        sheet = new Sheet(folder);
    }

    @Test
    void modulesDivideByStrings() {
        assertEquals(
                List.of(
                        "pack > modules: 23 modules do not divide by 2 strings; write the modules of all strings together"),
                sheet.complaints("pack: {modules: ▸\"23\", strings: \"2\"}\n"));
    }

    @Test
    void boxesAddUpToThePack() {
        assertEquals(
                List.of("pack > boxes: the boxes hold 21 modules together and the pack has 22; correct one of them"),
                sheet.complaints("""
                        parts: [{id: a, role: battery}, {id: b, role: battery}]
                        pack:
                          modules: "22"
                          ▸boxes: [{part: a, modules: "8"}, {part: b, modules: "13"}]
                        """));
    }

    @Test
    void countsAreWhole() {
        assertEquals(
                List.of(
                        "pack > modules: `0` cannot be; write a whole number from 1 to 10000",
                        "pack > strings: `1.5` cannot be; write a whole number from 1 to 10000",
                        "pack > module > cell-groups: `4 ± 1` cannot be; write a whole number from 1 to 10000",
                        "pack > boxes > entry 1 > modules: `> 3` cannot be; write a whole number from 1 to 10000"),
                sheet.complaints("""
                        parts: [{id: a, role: battery}]
                        pack:
                          modules: ▸"0"
                          strings: ▸"1.5"
                          module: {cell-groups: ▸"4 ± 1"}
                          boxes: [{part: a, modules: ▸"> 3"}]
                        """));
    }

    @Test
    void aMonitorWatchesWhatABoxHas() {
        assertEquals(
                List.of(
                        "pack > monitors > entry 1 > watches > entry 1 > cell-groups: `a` has 32 cell groups, and 33 is watched",
                        "pack > monitors > entry 1 > watches > entry 1 > temperature-points: `all` is no list of numbers; write runs and numbers such as 1-32, 34"),
                sheet.complaints("""
                        parts: [{id: a, role: battery}, {id: m, role: battery-monitor}]
                        pack:
                          module: {cell-groups: "4", temperature-points: "2"}
                          boxes: [{part: a, modules: "8"}]
                          monitors:
                            - part: m
                              watches: [{part: a, cell-groups: ▸1-33, temperature-points: ▸all}]
                        """));
    }

    @Test
    void aLimitFitsWhatItWatchesAndStandsOnce() {
        assertEquals(
                List.of(
                        "pack > monitors > entry 1 > limits > entry 1 > at: `45 °C` does not fit `cell-voltage-high`; write it in V",
                        "pack > monitors > entry 1 > limits > entry 2 > at: `4.2 V` does not fit `temperature-high`; write it in °C",
                        "pack > monitors > entry 1 > limits > entry 3 > on: `temperature-high` stands twice in one monitor"),
                sheet.complaints("""
                        parts: [{id: m, role: battery-monitor}]
                        pack:
                          monitors:
                            - part: m
                              limits:
                                - {on: cell-voltage-high, at: ▸45 °C}
                                - {on: temperature-high, at: ▸4.2 V}
                                - {on: ▸temperature-high, at: 60 °C}
                        """));
    }
}

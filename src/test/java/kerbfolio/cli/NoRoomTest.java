package kerbfolio.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import kerbfolio.Child;
import kerbfolio.JobText;
import kerbfolio.fingerprint.Making;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full, and a folder nobody may write: the earlier dossier stays whole, and nothing is left beside it. */
class NoRoomTest {
    @TempDir
    private Path folder = Path.of("");

    /** A disk of its own size in memory, where this program may mount one. */
    private record SmallDisk(Path at) implements AutoCloseable {
        static SmallDisk of(Path at, long bytes) throws IOException {
            Files.createDirectory(at);
            assumeTrue(
                    Child.succeeds("mount", "-t", "tmpfs", "-o", "size=" + bytes, "tmpfs", at.toString()),
                    "skipped: no disk can be mounted here");
            return new SmallDisk(at);
        }

        void lock() {
            assumeTrue(
                    Child.succeeds("mount", "-o", "remount,ro", at.toString()), "skipped: no disk can be locked here");
        }

        @Override
        public void close() {
            assertTrue(Child.succeeds("umount", at.toString()));
        }
    }

    private Typed issue(JobText job, Path out) {
        return Typed.of("issue", job.writeTo(folder).toString(), "--replace", "--out", out.toString());
    }

    private static Map<Path, String> content(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            var content = new TreeMap<Path, String>();
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                content.put(file, new String(Files.readAllBytes(file), ISO_8859_1));
            }
            return content;
        }
    }

    /** Bytes a dossier takes. */
    private long size() throws Exception {
        Making now = new Making(Kerbfolio.program(), null);
        return Rerun.of(JobText.blank().writeTo(folder), now).issued().files().values().stream()
                .mapToLong(file -> file.length)
                .sum();
    }

    @Test
    void aFullDiskKeepsTheEarlierDossier() throws Exception {
        try (SmallDisk disk = SmallDisk.of(folder.resolve("disk"), size() * 3 / 2)) {
            assertEquals(1, issue(JobText.blank(), disk.at()).exitCode());
            Map<Path, String> earlier = content(disk.at());
            assertEquals(4, earlier.size());
            Typed typed = issue(JobText.blank().with("job.shop", "Another Shop"), disk.at());
            assertEquals(3, typed.exitCode(), typed.out());
            assertEquals(
                    disk.at().resolve("1-1") + ": could not be written: No space left on device", typed.sentence());
            assertEquals(earlier, content(disk.at()));
            try (Stream<Path> beside = Files.list(disk.at())) {
                assertEquals(List.of(disk.at().resolve("1-1")), beside.toList());
            }
        }
    }

    @Test
    void aDiskNobodyMayWriteKeepsTheEarlierDossier() throws Exception {
        try (SmallDisk disk = SmallDisk.of(folder.resolve("disk"), size() * 3)) {
            issue(JobText.blank(), disk.at());
            disk.lock();
            keeps(disk.at(), "could not be written: Read-only file system");
        }
    }

    @Test
    void aFolderNobodyMayWriteKeepsTheEarlierDossier() throws Exception {
        Path out = Files.createDirectory(folder.resolve("out"));
        issue(JobText.blank(), out);
        assertTrue(out.toFile().setWritable(false));
        try {
            assumeFalse(Files.isWritable(out), "skipped: this user may write everywhere");
            keeps(out, "could not be written: the folder it belongs into may not be written");
        } finally {
            assertTrue(out.toFile().setWritable(true));
        }
    }

    private void keeps(Path out, String reason) throws IOException {
        Map<Path, String> earlier = content(out);
        assertEquals(4, earlier.size());
        Typed other = issue(JobText.blank().with("job.shop", "Another Shop"), out);
        assertEquals(3, other.exitCode(), other.out());
        assertEquals(out.resolve("1-1") + ": " + reason, other.sentence());
        Typed same = issue(JobText.blank(), out);
        assertEquals(1, same.exitCode(), same.err());
        assertTrue(same.out().contains("holds exactly this already; nothing was written"), same.out());
        assertEquals(earlier, content(out));
    }
}

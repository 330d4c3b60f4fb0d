package kerbfolio.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A zip without the clock in it: the same parts give the same bytes. */
final class FixedZip {
    /** The earliest time an entry can have. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private FixedZip() {}

    static byte[] of(byte[] zip) throws IOException {
        var out = new ByteArrayOutputStream(zip.length);
        try (var from = new ZipInputStream(new ByteArrayInputStream(zip));
                var to = new ZipOutputStream(out)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                var fixed = new ZipEntry(entry.getName());
                fixed.setTimeLocal(TIME);
                to.putNextEntry(fixed);
                from.transferTo(to);
                to.closeEntry();
            }
        }
        return out.toByteArray();
    }
}

package kerbfolio.job;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import kerbfolio.reading.Kebab;

/** The sections of a job file, by the names they are written under. */
final class Sections {
    static final List<String> NAMES = Arrays.stream(Job.class.getRecordComponents())
            .map(RecordComponent::getName)
            .map(Kebab::of)
            .toList();

    private Sections() {}
}

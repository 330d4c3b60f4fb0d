package kerbfolio.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Records, maps and lists to JSON: the same content gives the same bytes, in UTF-8 with one `\n` a line. */
public final class JsonWriter {
    /** What lies past the twelfth digit of a double is no digit of a result. */
    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonWriteFeature.COMBINE_UNICODE_SURROGATES_IN_UTF8)
            .build();

    private final JsonGenerator out;

    private JsonWriter(JsonGenerator out) {
        this.out = out;
    }

    /**
     * Writes a value: a record (its keys in kebab case), map, iterable, text, number, boolean, enum, null, an optional of these;
     * anything else as its {@code toString}.
     *
     * @throws IllegalArgumentException for a number that is not finite
     */
    public static byte[] write(@Nullable Object value) {
        var bytes = new ByteArrayOutputStream();
        var indenter = new DefaultIndenter("  ", "\n");
        try (JsonGenerator out = FACTORY.createGenerator(bytes)) {
            out.setPrettyPrinter(new DefaultPrettyPrinter(Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                            .withObjectEmptySeparator("")
                            .withArrayEmptySeparator(""))
                    .withObjectIndenter(indenter)
                    .withArrayIndenter(indenter));
            new JsonWriter(out).value(value);
            out.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException("memory could not be written", e);
        }
        return bytes.toByteArray();
    }

    private void value(@Nullable Object value) throws IOException {
        if (value == null) {
            out.writeNull();
        } else if (value instanceof Optional<?> optional) {
            value(optional.orElse(null));
        } else if (value instanceof Record record && !Scalars.reads(record.getClass())) {
            record(record);
        } else if (value instanceof Map<?, ?> map) {
            out.writeStartObject();
            for (var entry : map.entrySet()) {
                out.writeFieldName(String.valueOf(entry.getKey()));
                value(entry.getValue());
            }
            out.writeEndObject();
        } else if (value instanceof Iterable<?> list) {
            out.writeStartArray();
            for (Object entry : list) {
                value(entry);
            }
            out.writeEndArray();
        } else if (value instanceof Boolean yes) {
            out.writeBoolean(yes);
        } else if (value instanceof Enum<?> word) {
            out.writeString(Scalars.word(word));
        } else if (value instanceof Number number) {
            out.writeNumber(digits(number));
        } else {
            out.writeString(value.toString());
        }
    }

    private void record(Record record) throws IOException {
        out.writeStartObject();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            out.writeFieldName(Kebab.of(component.getName()));
            try {
                component.getAccessor().setAccessible(true);
                value(component.getAccessor().invoke(record));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("a record that hides " + component, e);
            }
        }
        out.writeEndObject();
    }

    private static String digits(Number number) {
        if (!(number instanceof Double || number instanceof Float)) {
            return number.toString();
        }
        double value = number.doubleValue();
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("JSON knows no " + value);
        }
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        boolean plain = rounded.precision() - rounded.scale() <= 15 && rounded.scale() <= 15;
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}

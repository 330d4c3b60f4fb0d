package kerbfolio.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.CustomDefinition.AttributeInclusion;
import com.github.victools.jsonschema.generator.CustomDefinition.DefinitionType;
import com.github.victools.jsonschema.generator.CustomPropertyDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.MemberScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Kebab;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import kerbfolio.reading.Unread;

/** What an editor must know of the job file to complete its keys, taken from the records themselves. */
final class JobSchema {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JobSchema() {}

    static String text() {
        var config = new SchemaGeneratorConfigBuilder(SchemaVersion.DRAFT_7, OptionPreset.PLAIN_JSON)
                .with(Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT, Option.DEFINITIONS_FOR_ALL_OBJECTS)
                .without(Option.SCHEMA_VERSION_INDICATOR);
        config.forFields()
                .withPropertyNameOverrideResolver(field -> Kebab.of(field.getDeclaredName()))
                .withRequiredCheck(field -> field.getAnnotation(Must.class) != null)
                .withDescriptionResolver(JobSchema::description)
                .withCustomDefinitionProvider((field, context) -> withUnit(field)
                        ? new CustomPropertyDefinition(NODES.objectNode().put("type", "string"), AttributeInclusion.YES)
                        : null);
        config.forTypesInGeneral()
                .withPropertySorter(Comparator.comparingInt(JobSchema::place))
                .withCustomDefinitionProvider((type, context) -> {
                    ObjectNode written = written(type.getErasedType());
                    return written == null
                            ? null
                            : new CustomDefinition(written, DefinitionType.INLINE, AttributeInclusion.NO);
                });
        JsonNode schema = new SchemaGenerator(config.build()).generateSchema(Job.class);
        ObjectNode headed = NODES.objectNode();
        headed.put("$schema", "http://json-schema.org/draft-07/schema#");
        headed.put("title", "Kerbfolio job file");
        headed.setAll((ObjectNode) schema);
        return headed.toPrettyString().replace("\r\n", "\n") + "\n";
    }

    /** A bare number is refused where a unit is asked for, so that an editor may say so first. */
    private static boolean withUnit(FieldScope field) {
        In in = field.getAnnotation(In.class);
        return field.getType().getErasedType() == Quantity.class
                && in != null
                && !in.value().equals("1");
    }

    /** The order of the record is the order of the file. */
    private static int place(MemberScope<?, ?> member) {
        List<String> components = Arrays.stream(
                        member.getDeclaringType().getErasedType().getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
        return components.indexOf(member.getDeclaredName());
    }

    /** How a value of a type is written; null for what has keys of its own. */
    private static ObjectNode written(Class<?> type) {
        if (type == String.class || type == Quantity.class) {
            // An editor takes 0012345 and 1.10 for numbers; the reader keeps them as they are written.
            ObjectNode node = NODES.objectNode();
            node.putArray("type").add("string").add("number");
            return node;
        }
        if (type == LocalDate.class) {
            return NODES.objectNode().put("type", "string").put("format", "date");
        }
        if (type == Unread.class) {
            return NODES.objectNode();
        }
        if (type.isEnum()) {
            ObjectNode node = NODES.objectNode().put("type", "string");
            var words = node.putArray("enum");
            for (Object constant : type.getEnumConstants()) {
                words.add(constant.toString().toLowerCase(Locale.ROOT));
            }
            return node;
        }
        return null;
    }

    private static String description(FieldScope field) {
        Means means = field.isFakeContainerItemScope() ? null : field.getAnnotation(Means.class);
        In in = field.getAnnotation(In.class);
        if (means == null || in == null) {
            return means == null ? null : means.value();
        }
        return means.value()
                + switch (in.value()) {
                    case "1" -> "; a bare number";
                    case "*" -> "; with its unit";
                    default -> "; with its unit, such as " + in.value();
                };
    }
}

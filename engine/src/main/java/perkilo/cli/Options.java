package perkilo.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.TypeConversionException;

/**
 * Options and parameters of the command line.
 *
 * <p>They are built rather than annotated: reading annotations took a seventh of the time of a small {@code cost}.
 */
final class Options {

    private Options() {}

    /** An option that is said or not. */
    static OptionSpec flag(String description, String... names) {
        return flagBuilder(description, names).build();
    }

    /** What {@link #flag} builds, for a flag with something besides. */
    static OptionSpec.Builder flagBuilder(String description, String... names) {
        return OptionSpec.builder(names).type(boolean.class).arity("0").description(description);
    }

    /**
     * An option with a value.
     *
     * @param label what stands for the value in the help
     */
    static OptionSpec value(Class<?> type, String label, String description, String... names) {
        return valueBuilder(type, label, description, names).build();
    }

    /** An option with a day for its value. */
    static OptionSpec day(String description, String... names) {
        return valueBuilder(LocalDate.class, "YYYY-MM-DD", description, names)
                .converters(new Day())
                .build();
    }

    /** A class, as a lambda would keep all converters of the library out of the archive that a start is made from. */
    private static final class Day implements ITypeConverter<LocalDate> {

        @Override
        public LocalDate convert(String typed) {
            try {
                return LocalDate.parse(typed);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException(typed + " is not a day"); // WrongUsage says what is
            }
        }
    }

    /**
     * An option with a value that there always is.
     *
     * @param usual the value where none is said, as it would be typed
     */
    static OptionSpec valueOr(String usual, Class<?> type, String label, String description, String... names) {
        return valueBuilder(type, label, description, names).defaultValue(usual).build();
    }

    /** What {@link #value} builds, for an option with something besides. */
    static OptionSpec.Builder valueBuilder(Class<?> type, String label, String description, String... names) {
        return OptionSpec.builder(names).type(type).arity("1").paramLabel(label).description(description);
    }

    /** An option that may be said several times. */
    static OptionSpec values(Class<?> type, String label, String description, String name) {
        return valuesBuilder(type, label, description, name).build();
    }

    /** An option with several values between commas. */
    static OptionSpec listed(Class<?> type, String label, String description, String name) {
        return valuesBuilder(type, label, description, name).splitRegex(",").build();
    }

    private static OptionSpec.Builder valuesBuilder(Class<?> type, String label, String description, String name) {
        return valueBuilder(List.class, label, description, name).auxiliaryTypes(type);
    }

    /**
     * A parameter, which is told by its place.
     *
     * @param index from zero
     * @param arity {@code 1} where it must be said, {@code 0..1} where it may
     */
    static PositionalParamSpec parameter(int index, String arity, Class<?> type, String label, String description) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(index))
                .arity(arity)
                .required(isRequired(arity))
                .type(type)
                .paramLabel(label)
                .description(description)
                .build();
    }

    /** All parameters, of one kind; {@code arity} as {@code 1..*}. */
    static PositionalParamSpec parameters(String arity, Class<?> type, String label, String description) {
        return PositionalParamSpec.builder()
                .arity(arity)
                .required(isRequired(arity))
                .type(List.class)
                .auxiliaryTypes(type)
                .paramLabel(label)
                .description(description)
                .build();
    }

    private static boolean isRequired(String arity) {
        return !arity.startsWith("0");
    }

    /** Whether a flag was said. */
    static boolean isOn(OptionSpec flag) {
        return Boolean.TRUE.equals(flag.getValue());
    }

    /** What was said for an option or a parameter; null for nothing. */
    static <T> @Nullable T said(ArgSpec option, Class<T> type) {
        return type.cast(option.getValue());
    }

    /** All that was said for an option or the parameters. */
    static <T> List<T> allSaid(ArgSpec option, Class<T> type) {
        List<?> values = option.getValue();
        return values == null ? List.of() : values.stream().map(type::cast).toList();
    }
}

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

    /** An option without a value. */
    static OptionSpec flag(String description, String... names) {
        return flagBuilder(description, names).build();
    }

    /** Like {@link #flag}, before it is built. */
    static OptionSpec.Builder flagBuilder(String description, String... names) {
        return OptionSpec.builder(names).type(boolean.class).arity("0").description(description);
    }

    /**
     * An option with a value.
     *
     * @param label the word for the value in the help
     */
    static OptionSpec value(Class<?> type, String label, String description, String... names) {
        return valueBuilder(type, label, description, names).build();
    }

    /** An option whose value is a day. */
    static OptionSpec day(String description, String... names) {
        return valueBuilder(LocalDate.class, "YYYY-MM-DD", description, names)
                .converters(new Day())
                .build();
    }

    /**
     * A class because a lambda would keep all converters of the library out of the archive that speeds up the start.
     */
    private static final class Day implements ITypeConverter<LocalDate> {

        @Override
        public LocalDate convert(String typed) {
            try {
                return LocalDate.parse(typed);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException(typed + " is not a day"); // WrongUsage prints its own message
            }
        }
    }

    /**
     * An option with a default value.
     *
     * @param usual the default value, as a person would type it
     */
    static OptionSpec valueOr(String usual, Class<?> type, String label, String description, String... names) {
        return valueBuilder(type, label, description, names).defaultValue(usual).build();
    }

    /** Like {@link #value}, before it is built. */
    static OptionSpec.Builder valueBuilder(Class<?> type, String label, String description, String... names) {
        return OptionSpec.builder(names).type(type).arity("1").paramLabel(label).description(description);
    }

    /** An option that may be given several times. */
    static OptionSpec values(Class<?> type, String label, String description, String name) {
        return valuesBuilder(type, label, description, name).build();
    }

    /** An option with several values, separated by commas. */
    static OptionSpec listed(Class<?> type, String label, String description, String name) {
        return valuesBuilder(type, label, description, name).splitRegex(",").build();
    }

    private static OptionSpec.Builder valuesBuilder(Class<?> type, String label, String description, String name) {
        return valueBuilder(List.class, label, description, name).auxiliaryTypes(type);
    }

    /**
     * A parameter, which is recognised by its place.
     *
     * @param index from zero
     * @param arity {@code 1} where it is required, {@code 0..1} where it is optional
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

    /** All parameters, if they are of one kind; {@code arity} such as {@code 1..*}. */
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

    /** Whether a flag was given. */
    static boolean isOn(OptionSpec flag) {
        return Boolean.TRUE.equals(flag.getValue());
    }

    /** The value of an option or a parameter; null if none was given. */
    static <T> @Nullable T said(ArgSpec option, Class<T> type) {
        return type.cast(option.getValue());
    }

    /** All values of an option or of the parameters. */
    static <T> List<T> allSaid(ArgSpec option, Class<T> type) {
        List<?> values = option.getValue();
        return values == null ? List.of() : values.stream().map(type::cast).toList();
    }
}

package perkilo.desk;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;

/** The workbooks to start from. */
public enum Template {
    LAUNCH("price a launch: three products, costed at 300, 1,000 and 5,000 units (an invented brand as the example)"),
    ORDERS("plan raw-material orders: demand over half a year, stock with expiry, lead times"),
    EMOLLIENTS("compare emollients on cost: formulas rich in emollients, and what could replace them"),
    MINIMAL("the smallest example: one formula and one price list");

    private final String purpose;

    Template(String purpose) {
        this.purpose = purpose;
    }

    /** The template with a name, in any case. */
    public static Optional<Template> find(String name) {
        for (Template template : values()) {
            if (template.word().equalsIgnoreCase(name.strip())) {
                return Optional.of(template);
            }
        }
        return Optional.empty();
    }

    /** The name that a person types. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its purpose, for the list of templates. */
    public String purpose() {
        return purpose;
    }

    /** The whole workbook. */
    public byte[] content() throws IOException {
        try (InputStream bytes = open()) {
            return bytes.readAllBytes();
        }
    }

    /** The workbook's bytes. */
    InputStream open() throws IOException {
        String resource = "/perkilo/workbook-templates/" + word() + ".xlsx";
        InputStream bytes = Template.class.getResourceAsStream(resource);
        if (bytes == null) {
            throw new FileNotFoundException(DeskMessages.templateMissing(word()));
        }
        return bytes;
    }
}

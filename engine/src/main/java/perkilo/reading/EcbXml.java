package perkilo.reading;

import java.io.InputStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;

/**
 * The European Central Bank's reference rates as XML: a {@code Cube} with a {@code time} for each day, and in it a
 * {@code Cube} with {@code currency} and {@code rate} for each currency.
 */
final class EcbXml {

    private final String file;
    private final XMLStreamReader xml;
    private final Findings findings;
    private final List<DatedRate> rates = new ArrayList<>();
    private @Nullable LocalDate day;

    private EcbXml(String file, XMLStreamReader xml, Findings findings) {
        this.file = file;
        this.xml = xml;
        this.findings = findings;
    }

    /**
     * All rates of a file.
     *
     * @throws XMLStreamException if it is not well-formed XML, or declares a document type
     */
    static List<DatedRate> read(String file, InputStream content, Findings findings) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        EcbXml reader = new EcbXml(file, factory.createXMLStreamReader(content), findings);
        reader.read();
        return reader.rates;
    }

    private void read() throws XMLStreamException {
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.DTD) {
                throw new XMLStreamException("a document type is not expected", xml.getLocation());
            }
            if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("Cube")) {
                cube();
            }
        }
    }

    private void cube() {
        String time = xml.getAttributeValue(null, "time");
        String code = xml.getAttributeValue(null, "currency");
        String rate = xml.getAttributeValue(null, "rate");
        if (time != null) {
            day = day(time);
        }
        if (code == null || rate == null || day == null) {
            return;
        }
        CurrencyUnit currency = Currencies.find(code).orElse(null);
        BigDecimal number = number(rate);
        if (currency == null) {
            findings.warning(origin(), RateTableMessages.unknownCurrency(code));
        } else if (number == null) {
            findings.error(origin(), RateTableMessages.notARate(code, rate));
        } else {
            rates.add(
                    new DatedRate(WideRates.EURO, currency, new Figure(number, origin(), null), day, WideRates.SOURCE));
        }
    }

    private @Nullable LocalDate day(String time) {
        try {
            return LocalDate.parse(time);
        } catch (DateTimeParseException e) {
            findings.error(origin(), RateTableMessages.notADate(time));
            return null;
        }
    }

    private static @Nullable BigDecimal number(String rate) {
        if (!rate.matches("\\d{1,15}(\\.\\d{1,15})?")) {
            return null;
        }
        BigDecimal number = new BigDecimal(rate);
        return number.signum() > 0 ? number : null;
    }

    private Origin origin() {
        return new Origin(file, "", "line " + xml.getLocation().getLineNumber());
    }
}

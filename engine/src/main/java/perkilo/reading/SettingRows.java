package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Buyer;
import perkilo.model.Settings;
import perkilo.names.Spelling;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.DutyBasis;
import perkilo.reading.table.CellMessages;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableMessages;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.schema.SettingsSheet;

/** Reads the settings: one per row, by name. */
final class SettingRows {

    private static final Pattern WORDS = Pattern.compile("[,;\\s]+");

    private final ColumnNames names = new ColumnNames(SettingsSheet.SETTINGS);
    private final Findings findings;
    private final Map<InputColumn, TableRow> rows = new LinkedHashMap<>();

    SettingRows(Tables tables, Findings findings) {
        this.findings = findings;
        for (TableRow row : tables.rows(SettingsSheet.SCHEMA, findings)) {
            keep(row);
        }
        rows.values().forEach(SuspectedFractions::warn);
    }

    private void keep(TableRow row) {
        String name = row.text(SettingsSheet.SETTING);
        Optional<ColumnNames.Named> named = names.find(name);
        if (named.isEmpty()) {
            findings.warning(row.origin(SettingsSheet.SETTING), unknown(name));
            return;
        }
        if (!named.get().notUnderstood().isEmpty()) {
            findings.error(
                    row.origin(SettingsSheet.SETTING),
                    TableMessages.unknownUnit(
                            named.get().notUnderstood(), named.get().column().header()));
        }
        TableRow value = row.reading(SettingsSheet.VALUE, named.get());
        TableRow first = rows.putIfAbsent(named.get().column(), value);
        if (first != null) {
            findings.error(
                    row.origin(SettingsSheet.SETTING),
                    SettingMessages.twice(name, first.origin().where()));
        }
    }

    private static String unknown(String name) {
        return Spelling.nearest(
                        name,
                        SettingsSheet.SETTINGS.stream().map(InputColumn::header).toList())
                .map(nearest -> SettingMessages.unknown(name, nearest))
                .orElseGet(() -> SettingMessages.unknown(name));
    }

    /** The home currency that is set; null if none is, or if it was reported. */
    @Nullable CurrencyUnit home() {
        TableRow row = rows.get(SettingsSheet.HOME_CURRENCY);
        CurrencySign sign = row == null ? null : row.currency(SettingsSheet.HOME_CURRENCY);
        if (row == null || sign == null) {
            return null;
        }
        if (!sign.isClear()) {
            findings.error(
                    row.origin(SettingsSheet.HOME_CURRENCY),
                    CellMessages.sharedSign(
                            SettingsSheet.HOME_CURRENCY.header(),
                            sign.text(),
                            sign.meanings().get(0).getCurrencyCode()));
        }
        return sign.meanings().get(0);
    }

    /** Whether the home currency is set, even if wrongly. */
    boolean hasHome() {
        TableRow row = rows.get(SettingsSheet.HOME_CURRENCY);
        return row != null && !row.isBlank(SettingsSheet.HOME_CURRENCY);
    }

    /** The costing date that is set; null if none is, or if it was reported. */
    @Nullable LocalDate costingDate() {
        TableRow row = rows.get(SettingsSheet.COSTING_DATE);
        return row == null ? null : row.date(SettingsSheet.COSTING_DATE);
    }

    /** The cell of a setting; empty if it is not set. */
    Optional<Origin> origin(InputColumn setting) {
        return Optional.ofNullable(rows.get(setting)).map(row -> row.origin(setting));
    }

    /** All settings, with their defaults. */
    Settings settings(CurrencyUnit home, LocalDate costingDate) {
        return new Settings(
                new Settings.Currencies(
                        home, reportCurrencies(home), figure(SettingsSheet.CONVERSION_MARGIN, Figure.ZERO)),
                costingDate,
                new Settings.Buying(
                        dutyBasis(),
                        figure(SettingsSheet.LEFTOVER_CREDIT, Figure.ZERO),
                        figure(SettingsSheet.HOLDING, Figure.ZERO),
                        figure(SettingsSheet.PRICE_AGE_LIMIT, Settings.USUAL_PRICE_AGE_LIMIT)),
                new Settings.Making(
                        money(SettingsSheet.LABOUR_RATE, home, Figure.ZERO),
                        figure(SettingsSheet.OVERHEAD, Figure.ZERO),
                        money(SettingsSheet.PROCESS_WATER, home, Figure.ZERO)),
                new Settings.CashLimits(
                        limit(SettingsSheet.CASH_PER_MONTH, home), limit(SettingsSheet.CASH_TOTAL, home)),
                figure(SettingsSheet.LEAST_SAVING, Settings.USUAL_LEAST_SAVING),
                new Settings.Testing(
                        limit(SettingsSheet.STABILITY_TEST, home),
                        limit(SettingsSheet.CHALLENGE_TEST, home),
                        limit(SettingsSheet.ASSESSMENT, home)),
                buyer(),
                new Settings.Outlook(
                        figure(SettingsSheet.SENSITIVITY, Settings.USUAL_SENSITIVITY),
                        figure(SettingsSheet.HORIZON_DAYS, Settings.USUAL_HORIZON_DAYS)));
    }

    private Buyer buyer() {
        return new Buyer(
                text(SettingsSheet.COMPANY),
                text(SettingsSheet.COMPANY_ADDRESS),
                text(SettingsSheet.DELIVERY_ADDRESS),
                text(SettingsSheet.COMPANY_CONTACT),
                text(SettingsSheet.COMPANY_EMAIL),
                text(SettingsSheet.TAX_NUMBER),
                rows.values().stream().findFirst().map(TableRow::origin).orElse(Origin.NONE));
    }

    private String text(InputColumn setting) {
        TableRow row = rows.get(setting);
        return row == null ? "" : row.lines(setting);
    }

    private Figure figure(InputColumn setting, Figure byDefault) {
        TableRow row = rows.get(setting);
        return row == null ? byDefault : row.figure(setting, byDefault);
    }

    private Figure money(InputColumn setting, CurrencyUnit home, Figure byDefault) {
        TableRow row = rows.get(setting);
        return row == null ? byDefault : Amounts.in(row, setting, home, byDefault);
    }

    private @Nullable Figure limit(InputColumn setting, CurrencyUnit home) {
        TableRow row = rows.get(setting);
        return row == null ? null : Amounts.in(row, setting, home);
    }

    private DutyBasis dutyBasis() {
        TableRow row = rows.get(SettingsSheet.DUTY_BASIS);
        String text = row == null ? "" : row.text(SettingsSheet.DUTY_BASIS);
        if (row == null || text.isEmpty()) {
            return DutyBasis.CIF;
        }
        for (DutyBasis basis : DutyBasis.values()) {
            if (basis.name().equals(text.toUpperCase(Locale.ROOT))) {
                return basis;
            }
        }
        findings.error(row.origin(SettingsSheet.DUTY_BASIS), SettingMessages.dutyBasis(text));
        return DutyBasis.CIF;
    }

    private List<CurrencyUnit> reportCurrencies(CurrencyUnit home) {
        TableRow row = rows.get(SettingsSheet.REPORT_CURRENCIES);
        List<CurrencyUnit> currencies = new ArrayList<>();
        if (row == null) {
            return currencies;
        }
        for (String word : List.of(WORDS.split(row.text(SettingsSheet.REPORT_CURRENCIES)))) {
            CurrencySign sign = CurrencySign.parse(word).orElse(null);
            if (!word.isEmpty() && (sign == null || !sign.isClear())) {
                findings.error(row.origin(SettingsSheet.REPORT_CURRENCIES), SettingMessages.reportCurrency(word));
            } else if (sign != null && !currencies.contains(sign.meanings().get(0)) && !sign.canMean(home)) {
                currencies.add(sign.meanings().get(0));
            }
        }
        return currencies;
    }
}

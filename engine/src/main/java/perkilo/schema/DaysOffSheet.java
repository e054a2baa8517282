package perkilo.schema;

import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.TEXT;

import java.util.List;

/** The Days off sheet: days on which nothing is ordered, besides Saturdays and Sundays. */
public final class DaysOffSheet {

    public static final InputColumn DAY = InputColumn.of("Day", DATE, "nothing is ordered on this day", "2026-12-25")
            .also("Date", "Day off", "Holiday", "Closed on")
            .needed();

    public static final InputColumn NOTE =
            InputColumn.of("Note", TEXT, "why", "Christmas").also("Reason", "Why", "Name", "Holiday name", "Occasion");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Days off",
            List.of(
                    "Day off",
                    "Holidays",
                    "Public holidays",
                    "Bank holidays",
                    "Closed days",
                    "Feiertage",
                    "Jours fériés",
                    "Giorni festivi",
                    "Festivos"),
            List.of(DAY),
            List.of(List.of(DAY, NOTE)),
            List.of(DAY, NOTE),
            "Days on which nothing is ordered; Saturdays and Sundays are off in any case.");

    private DaysOffSheet() {}
}

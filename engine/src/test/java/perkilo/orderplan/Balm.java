package perkilo.orderplan;

import java.util.List;
import perkilo.model.Book;
import perkilo.units.Measure;

/** A maker of a balm and a lotion who buys from three suppliers in two currencies. */
final class Balm {

    private Balm() {}

    static Trade trade() {
        return new Trade("2026-11-25")
                .holding("0.24")
                .margin("0.01")
                .rate("USD", "EUR", "0.92")
                .supplier("Oleo", "EUR", 10, "45", "300", "25", "0.35", "0.004", "0")
                .supplier("Pacific", "USD", 40, "120", "500", null, "0.8", "0.01", "0.065")
                .supplier("Glas", "EUR", 5, "30", null, null, "0", "0", "0.02")
                .material("Shea butter", "18", "0.02")
                .material("Squalane", "6", "0.01")
                .material("Wax", null, "0")
                .offer("Oleo", "Shea butter", "25", Measure.KG, null, 1, null, "0", "150", "100", "140.5")
                .offer("Oleo", "Squalane", "5", Measure.L, "10", 1, "2026-12-31", "0", "130", "50", "121")
                .offer("Pacific", "Squalane", "16", Measure.KG, "16", 1, null, "0", "260")
                .offer("Oleo", "Wax", "1", Measure.KG, null, 5, null, "0", "9.9", "20", "8.75")
                .offer("Glas", "Jar", "100", Measure.EACH, "500", 1, null, "0", "45", "2000", "39")
                .product(
                        "Balm",
                        List.of(Trade.component("Jar", "1", "0.02")),
                        "Shea butter",
                        "0.6",
                        "Squalane",
                        "0.25",
                        "Wax",
                        "0.15")
                .product("Lotion", List.of(), "Shea butter", "0.3", "Squalane", "0.7")
                .stock("Shea butter", "12500", Measure.G, "2027-02-10")
                .stock("Jar", "60", Measure.EACH, null)
                .demand("Balm", "120", "2027-01-01")
                .demand("Lotion", "45", "2027-02-01")
                .demand("Balm", "300", "2027-04-01")
                .demand("Balm", "80", "2027-01-01");
    }

    static Book book() {
        return trade().book();
    }
}

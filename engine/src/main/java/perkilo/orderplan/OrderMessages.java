package perkilo.orderplan;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import perkilo.costing.CostMessages;

/** What a person reads about a plan of orders, or why there is none. */
final class OrderMessages {

    private OrderMessages() {}

    // demand

    static String noDemand() {
        return "There is no demand to plan for. Add a sheet Demand with the columns Product, Units and Needed by.";
    }

    static String neededBeforeToday(String product, LocalDate neededBy, LocalDate today) {
        return "\"" + product + "\" is needed by " + neededBy + ", before the costing date of " + today
                + ". Correct the date, or plan from an earlier costing date.";
    }

    static String neededTooLate(String product, LocalDate neededBy, int days, LocalDate last) {
        return "\"" + product + "\" is needed by " + neededBy + ", but orders are planned for " + days
                + " days with needs, the last of them " + last + ". Remove the row for now.";
    }

    // stock

    static String stockNeedsDensity(String item, String unit) {
        return "The stock of \"" + item + "\" is in " + unit + ", but its density is unknown."
                + " Fill its density on the Materials sheet, or type the stock by weight.";
    }

    static String stockInOtherUnit(String item, String unit, String needed) {
        return "The stock of \"" + item + "\" is in " + unit + ", but it is needed in " + needed
                + ". Correct the unit.";
    }

    static String stockExpires(String quantity, String item, String lastDay) {
        return quantity + " of \"" + item + "\" will not be used before the expiry date, " + lastDay + ".";
    }

    static String notUsedAsExpectedTooLate(String quantity, String item, LocalDate expected) {
        return quantity + " of \"" + item + "\" are expected on " + expected
                + ", after the last day of the plan. This plan does not use them.";
    }

    static String stockIsFree() {
        return "Holding % per year is blank or 0, so stock costs nothing in this plan and may be bought long ahead."
                + " Fill in what capital, space and risk cost you.";
    }

    static String neverOrdered(List<String> items) {
        return "Never ordered, because made in the house or counted as process water: " + Quantities.quoted(items)
                + ".";
    }

    static String safetyNotKept(String item) {
        return "The safety stock of \"" + item + "\" cannot be kept, because no order can be there on some of the days."
                + " The plan is made without it.";
    }

    static String moreThanNeeded(
            String item, String needed, String bought, String left, String cost, String currency, String until) {
        return "More of \"" + item + "\" is bought than is needed: " + bought + " bought, " + needed + " needed, "
                + left
                + " left at the end. What is left costs " + cost + " " + currency + ". " + until
                + " A smaller pack or minimum would help.";
    }

    static String leftExpires(LocalDate day) {
        return "It has expired on " + day + ".";
    }

    static String leftKeeps() {
        return "No shelf life is known for it.";
    }

    // suppliers

    static String noLeadTime(String supplier) {
        return supplier + " has no lead time, so orders are planned as if delivered on the day they are placed."
                + " Fill Lead time days, with 0 if that is right.";
    }

    static String notInSuppliers(String supplier) {
        return supplier + " is not listed in Suppliers, so the lead time is unknown and orders are planned as if"
                + " delivered on the day they are placed. Add a row for " + supplier + " with Lead time days.";
    }

    // prices that change

    static String announcedNeedsDensity(String item, String announcedFor) {
        return "\"" + item + "\" is sold by volume from " + announcedFor
                + " on, but its density is unknown. Fill Density g/mL on the Materials sheet.";
    }

    static String gapBetweenPrices(String supplier, String item, String pack, LocalDate last, String next) {
        return supplier + "'s price for \"" + item + "\" in packs of " + pack + " ends on " + last
                + ", and their next price begins on " + next
                + ". No order of these packs is planned in between. Ask for a quote.";
    }

    static String priceEndsBeforeOrder(String supplier, String item, String validUntil, LocalDate orderBy) {
        return supplier + "'s price for \"" + item + "\" is valid until " + validUntil + ", but some is ordered by "
                + orderBy + ". The plan still uses this price. Ask for a new quote.";
    }

    // what cannot arrive in time, a sentence each

    static String cannotArrive(String item, String days, String missing, boolean isSeveral) {
        return "\"" + item + "\" cannot be there on " + days + ": " + missing + " are needed"
                + (isSeveral ? " in all" : "") + ", and the stock does not cover them.";
    }

    static String earliest(LocalDate arrival, String supplier, LocalDate ordered) {
        return "The earliest delivery is on " + arrival + " from " + supplier + ", if ordered on " + ordered + ".";
    }

    static String earliestOnceAnnounced(LocalDate arrival, String supplier, LocalDate ordered) {
        return "The earliest delivery is on " + arrival + " from " + supplier + ", if ordered on " + ordered + ", once "
                + supplier + "'s announced price takes effect.";
    }

    static String planForLater(LocalDate day, LocalDate today) {
        return "It is planned for " + day + (day.equals(today) ? ", today" : "")
                + ". Make the units later, or find a supplier with a shorter lead time.";
    }

    static String onOrderTooLate(String quantity, String expected) {
        return quantity + " are on order, but are expected only on " + expected + ".";
    }

    // the search

    static String shortfallOfOrders(YearMonth month, String reason, String remedy) {
        return CostMessages.shortfall("Payments in " + month, reason, remedy);
    }

    static String shortfallOfItem(String item, String day, String reason, String remedy) {
        return CostMessages.shortfall("\"" + item + "\" on " + day, reason, remedy);
    }

    static String notProven(String gap, String currency) {
        return "The orders are the best found in the time allowed. No plan can be cheaper by more than " + gap + " "
                + currency + ".";
    }

    static String noPlanInTime() {
        return "No plan of orders was found in the time allowed.";
    }
}

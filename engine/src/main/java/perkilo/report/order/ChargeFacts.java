package perkilo.report.order;

import java.math.BigDecimal;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.orderplan.SupplierOrder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/**
 * The charges on top of an order's goods, in the supplier's currency. JSON shows it as an object, the sheet as a row
 * for each charge.
 */
final class ChargeFacts {

    static final Column<SupplierOrder> SMALL_ORDER =
            fact("smallOrderCharge", "Small-order charge", order -> order.cost().smallOrderCharge());
    static final Column<SupplierOrder> INSURANCE =
            fact("insurance", "Insurance", order -> order.cost().insurance());
    static final Column<SupplierOrder> FREIGHT =
            fact("freight", "Total freight", order -> order.cost().freight());
    static final Column<SupplierOrder> DUTY =
            fact("duty", "Total duty", order -> order.cost().duty());

    private static final Table<SupplierOrder> TABLE = Table.of(SMALL_ORDER, INSURANCE, FREIGHT, DUTY);

    private ChargeFacts() {}

    /** The charges of an order. */
    static Table.One<SupplierOrder> of(SupplierOrder order) {
        return TABLE.one(order);
    }

    private static Column<SupplierOrder> fact(
            String key, String heading, Function<SupplierOrder, @Nullable BigDecimal> value) {
        return Column.<SupplierOrder>of(key, heading).value(value).json();
    }
}

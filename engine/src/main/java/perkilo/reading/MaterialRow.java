package perkilo.reading;

import static perkilo.schema.MaterialsSheet.ALLERGENS;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.reading.table.NumberText;
import perkilo.reading.table.TableRow;
import perkilo.schema.Column;
import perkilo.schema.MaterialsSheet;

/** Reads what is known of a material. */
final class MaterialRow {

    private static final Pattern NAME_AND_SHARE = Pattern.compile("^(.*?)[\\s:(]+([\\d.,]+\\s*%?)\\)?$");

    private MaterialRow() {}

    /**
     * The material of a row.
     *
     * @param home what house prices are in
     */
    static Material read(TableRow row, CurrencyUnit home) {
        return new Material(
                row.text(MaterialsSheet.MATERIAL),
                row.text(MaterialsSheet.INCI),
                row.list(MaterialsSheet.FUNCTIONS),
                row.figure(MaterialsSheet.DENSITY),
                Amounts.in(row, MaterialsSheet.HOUSE_PRICE, home),
                row.figure(MaterialsSheet.HANDLING_LOSS, Figure.ZERO),
                row.figure(MaterialsSheet.SHELF_LIFE),
                traits(row),
                row.origin(MaterialsSheet.MATERIAL));
    }

    private static Traits traits(TableRow row) {
        Traits traits = new Traits(
                row.figure(MaterialsSheet.ACTIVE),
                row.text(MaterialsSheet.SOLUBLE_IN),
                row.figure(MaterialsSheet.MAX_PROCESS),
                row.figure(MaterialsSheet.MELTS_AT),
                row.text(MaterialsSheet.CHARGE),
                row.text(MaterialsSheet.SPREADING_CLASS),
                row.figure(MaterialsSheet.SPREADING_VALUE),
                row.figure(MaterialsSheet.VISCOSITY),
                row.figure(MaterialsSheet.REQUIRED_HLB),
                row.figure(MaterialsSheet.HLB),
                row.figure(MaterialsSheet.USE_MIN),
                row.figure(MaterialsSheet.USE_MAX),
                row.figure(MaterialsSheet.LEGAL_MAX),
                row.figure(MaterialsSheet.PH_MIN),
                row.figure(MaterialsSheet.PH_MAX),
                row.figure(MaterialsSheet.NATURAL_ORIGIN),
                row.list(MaterialsSheet.TAGS),
                allergens(row));
        compare(row, MaterialsSheet.USE_MIN, traits.useMin(), MaterialsSheet.USE_MAX, traits.useMax());
        compare(row, MaterialsSheet.PH_MIN, traits.phMin(), MaterialsSheet.PH_MAX, traits.phMax());
        return traits;
    }

    private static void compare(
            TableRow row, Column lowColumn, @Nullable Figure low, Column highColumn, @Nullable Figure high) {
        if (low != null && high != null && low.value().compareTo(high.value()) > 0) {
            row.findings()
                    .error(
                            row.origin(highColumn),
                            "%s is below %s in %s"
                                    .formatted(
                                            highColumn.header(),
                                            lowColumn.header(),
                                            row.origin(lowColumn).where()));
        }
    }

    private static List<Traits.Allergen> allergens(TableRow row) {
        List<Traits.Allergen> allergens = new ArrayList<>();
        for (String word : row.list(ALLERGENS)) {
            Matcher matcher = NAME_AND_SHARE.matcher(word);
            if (!matcher.matches()) {
                allergens.add(new Traits.Allergen(word, null));
                continue;
            }
            String share = matcher.group(2).replace("%", "").strip();
            if (NumberText.parse(share) instanceof NumberText.Parsed parsed) {
                Figure figure = new Figure(parsed.value().movePointLeft(2), row.origin(ALLERGENS), null);
                allergens.add(new Traits.Allergen(matcher.group(1).strip(), figure));
            } else {
                row.findings()
                        .error(
                                row.origin(ALLERGENS),
                                "\"%s\" is not a name with a percentage; expected such as %s"
                                        .formatted(word, ALLERGENS.example()));
            }
        }
        return allergens;
    }
}

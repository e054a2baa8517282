package perkilo.reading.table;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Words for one pack, whatever is in it: on Offers sheets and in suppliers' own lists.
 *
 * <p>A new word is one more entry here. Words of the trade in five languages; common practice, no source.
 */
public final class PackWords {

    private static final List<String> WORDS = List.of(
            // English
            "pack",
            "packs",
            "package",
            "packages",
            "pk",
            "drum",
            "drums",
            "can",
            "cans",
            "pail",
            "pails",
            "bag",
            "bags",
            "carton",
            "cartons",
            "box",
            "boxes",
            "bottle",
            "bottles",
            "jerrycan",
            "jerrycans",
            "container",
            "containers",
            "bucket",
            "buckets",
            "ibc",
            "keg",
            "kegs",
            "sack",
            "sacks",
            "tote",
            "tub",
            "tubs",
            "tin",
            "tins",
            "case",
            "cases",
            "jar",
            "jars",
            "canister",
            "canisters",
            "big bag",
            "bigbag",
            "big bags",
            "fibc",
            "pallet",
            "pallets",
            "sachet",
            "sachets",
            "pouch",
            "pouches",
            "barrel",
            "barrels",
            "tank",
            "demijohn",
            "cylinder",
            "carboy",
            // German
            "gebinde",
            "geb",
            "gbd",
            "fass",
            "fässer",
            "faß",
            "kanister",
            "eimer",
            "sack",
            "säcke",
            "beutel",
            "karton",
            "kartons",
            "kiste",
            "kisten",
            "flasche",
            "flaschen",
            "dose",
            "dosen",
            "hobbock",
            "kolli",
            "kollo",
            "packung",
            "packungen",
            "container",
            "vpe",
            "kannen",
            "kanne",
            "hobbocks",
            "gebinden",
            "trommel",
            "trommeln",
            "paletten",
            "palette",
            "schachtel",
            "schachteln",
            "weithalsfass",
            "spundfass",
            "deckelfass",
            // French
            "fût",
            "colis",
            "fûts",
            "fut",
            "futs",
            "bidon",
            "bidons",
            "sac",
            "sacs",
            "seau",
            "seaux",
            "carton",
            "cartons",
            "caisse",
            "caisses",
            "bouteille",
            "bouteilles",
            "flacon",
            "flacons",
            "boîte",
            "boîtes",
            "jerrican",
            "jerricans",
            "conditionnement",
            "conditionnements",
            "emballage",
            "pot",
            "pots",
            "tonnelet",
            "tonnelets",
            "cubitainer",
            "touque",
            "palettes",
            "cuve",
            // Italian
            "fusto",
            "collo",
            "colli",
            "fusti",
            "fustino",
            "fustini",
            "tanica",
            "taniche",
            "sacco",
            "sacchi",
            "sacchetto",
            "sacchetti",
            "secchio",
            "secchi",
            "latta",
            "latte",
            "cartone",
            "cartoni",
            "scatola",
            "scatole",
            "bottiglia",
            "bottiglie",
            "flacone",
            "flaconi",
            "confezione",
            "confezioni",
            "imballo",
            "cisterna",
            "bidone",
            "bidoni",
            // Spanish
            "bidón",
            "bidon",
            "bidones",
            "tambor",
            "tambores",
            "saco",
            "sacos",
            "bolsa",
            "bolsas",
            "garrafa",
            "garrafas",
            "cubo",
            "cubos",
            "caja",
            "cajas",
            "botella",
            "botellas",
            "frasco",
            "frascos",
            "lata",
            "latas",
            "envase",
            "envases",
            "paquete",
            "paquetes");

    private static final Set<String> KNOWN = new HashSet<>(WORDS);

    private PackWords() {}

    /** Whether a word means one pack; case does not matter. */
    static boolean isPack(String word) {
        return KNOWN.contains(word.strip().toLowerCase(Locale.ROOT));
    }

    /** Words between a pack and what it holds. */
    private static final Set<String> LINKS =
            Set.of("of", "à", "a", "de", "zu", "mit", "da", "di", "con", "net", "netto");

    /**
     * Words beside a quantity without those for its pack: {@code kg} for {@code kg can}.
     *
     * @return empty if nothing is left, or nothing was left out
     */
    static Optional<String> without(String words) {
        StringBuilder left = new StringBuilder();
        boolean packs = false;
        for (String word : words.split("[\\s()\\[\\],-]+", -1)) {
            if (isPack(word)) {
                packs = true;
            } else if (!word.isEmpty() && !LINKS.contains(word.toLowerCase(Locale.ROOT))) {
                left.append(left.length() == 0 ? "" : " ").append(word);
            }
        }
        return packs && left.length() > 0 ? Optional.of(left.toString()) : Optional.empty();
    }

    /** All words, in lower case. */
    public static List<String> all() {
        return WORDS;
    }
}

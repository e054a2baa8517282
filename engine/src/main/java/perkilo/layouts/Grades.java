package perkilo.layouts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What tells one material from another of the same kind: its strength, viscosity, form, origin, and any number in its
 * name. Two names with different grades are different materials.
 *
 * @param numbers the numbers, in order
 * @param words the words, one for all spellings and languages
 */
public record Grades(List<String> numbers, Set<String> words) {

    private static final Pattern NOT_A_GRADE = Pattern.compile(
            "(?<!\\p{L})e ?-?\\d{3,4}[a-z]?(?![\\p{L}\\d])|\\d{2,7}-\\d{2}-\\d(?!\\d)|(?<![\\d.,])\\d[\\d.,]* ?(?:kg|lbs?)(?!\\p{L})");
    private static final Pattern NUMBER = Pattern.compile(
            "(\\d+(?:[.,]\\d+)?) ?(%|cst|mm2/s|mpas|cps|cp|kda|da|mesh|ppm|iu|ie|ml|mm|g|w|°c)?(?![\\p{L}])");
    private static final Pattern IN_WORD = Pattern.compile("\\p{L}+-?(\\d+(?:[.,]\\d+)?)|(\\d+(?:[.,]\\d+)?)\\p{L}+");
    private static final Pattern LETTERS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private static final Map<String, String> WORDS = spellings();

    /** The grades that a name gives. */
    public static Grades of(String name) {
        String folded = ListWords.tidy(name).toLowerCase(java.util.Locale.ROOT);
        String plain = NOT_A_GRADE.matcher(folded).replaceAll(" ");
        List<String> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(plain);
        int end = 0;
        while (number.find(end)) {
            numbers.add(plain(number.group(1)));
            end = number.end();
        }
        Matcher inWord = IN_WORD.matcher(plain);
        while (inWord.find()) {
            String digits = plain(inWord.group(1) == null ? inWord.group(2) : inWord.group(1));
            if (!numbers.contains(digits)) {
                numbers.add(digits);
            }
        }
        Collections.sort(numbers);
        Set<String> found = new HashSet<>();
        String before = "";
        for (String word : LETTERS.split(plain, -1)) {
            String key = word.isEmpty() ? "" : ListWords.key(word);
            String grade = WORDS.getOrDefault(before + " " + key, WORDS.get(key));
            if (grade != null) {
                found.add(grade);
            }
            before = key;
        }
        if (found.contains("unrefined")) {
            found.remove("refined");
        }
        return new Grades(numbers, found);
    }

    private static String plain(String digits) {
        return new BigDecimal(digits.replace(',', '.')).stripTrailingZeros().toPlainString();
    }

    /** Whether two names are of one grade: the same numbers and the same words for a grade. */
    public boolean isSame(Grades other) {
        return equals(other);
    }

    /** Whether the words are the same, whatever the numbers. */
    public boolean hasSameWords(Grades other) {
        return words.equals(other.words);
    }

    /**
     * One word for each grade, by all its spellings; words of the trade in five languages, common practice, no source.
     */
    private static Map<String, String> spellings() {
        Map<String, String> words = new HashMap<>();
        put(
                words,
                "solution",
                "solution; solutions; lösung; loesung; soluzione; solución; aqueous; wässrig; liquid; flüssig; liquide; liquido; sol");
        put(words, "powder", "powder; powdered; pulver; poudre; polvere; polvo; pwd");
        put(
                words,
                "pearls",
                "pearls; prills; beads; perlen; perles; microbeads; microprills; micropearls; perle; perlas; pastilles; pastillen; pastille; granules; granulat; granulate; pellets");
        put(words, "flakes", "flakes; flocken; schuppen; paillettes; écailles; scaglie; escamas; flake");
        put(
                words,
                "organic",
                "organic; bio; kba; kbt; biologique; biologico; biológico; biologisch; ökologisch; ecologico; ecológico; ab; demeter; nop");
        put(
                words,
                "oleic",
                "oleic; ho; hocholeic; hochölsäure; oléique; oleico; hochölig; hochölsäurehaltig; hochoelig; higholeic");
        put(
                words,
                "refined",
                "refined; raffiniert; raffinée; raffiné; raffinato; raffinata; refinado; refinada; raff; rbd; raffinat");
        put(
                words,
                "unrefined",
                "unrefined; unraffiniert; nativ; native; virgin; vierge; vergine; virgen; brut; crude; roh; raw; grezzo; crudo; naturbelassen; non raffinée; non raffiné; non raffinato; nicht raffiniert; sin refinar; non refined");
        put(words, "cold pressed", "cold pressed; kaltgepresst; pressed; coldpressed; pression froid; spremuto freddo");
        put(
                words,
                "deodorised",
                "deodorised; deodorized; desodoriert; deodoriert; désodorisé; désodorisée; deodorizzato; deodorizzata; desodorizado; deo; geruchlos; odourless; odorless");
        put(words, "hydrogenated", "hydrogenated; hydriert; gehärtet; hydrogéné; hydrogénée; idrogenato; hidrogenado");
        put(words, "fractionated", "fractionated; fraktioniert; fractionné; fractionnée; frazionato; fraccionado");
        put(words, "leaf", "leaf; leaves; blatt; blätter; feuille; feuilles; foglia; foglie; hoja; hojas");
        put(words, "seed", "seed; seeds; samen; saat; graine; graines; seme; semi; semilla; semillas");
        put(words, "kernel", "kernel; kernels; kern; kerne; noyau; nocciolo; hueso; stone");
        put(words, "root", "root; roots; wurzel; racine; radice; raíz");
        put(words, "flower", "flower; flowers; blüte; blüten; fleur; fleurs; fiore; fiori; flor; flores");
        put(words, "bark", "bark; rinde; écorce; corteccia; corteza");
        put(words, "peel", "peel; schale; zeste; buccia; cáscara; rind");
        put(words, "fruit", "fruit; frucht; frutto; fruta");
        put(words, "germ", "germ; keim; germe");
        put(words, "husk", "husk; hull");
        put(words, "extract", "extract; extrakt; extrait; estratto; extracto");
        put(words, "hydrosol", "hydrosol; hydrolat; hydrolate; floral water");
        put(words, "oil", "essential; ätherisch; ätherisches; essentielle; essenziale; esencial");
        put(words, "hmw", "hmw; high molecular; hochmolekular");
        put(words, "lmw", "lmw; low molecular; niedermolekular");
        put(words, "mmw", "mmw; medium molecular");
        put(
                words,
                "usp",
                "usp; bp; pharmaeur; pharma; pharmaceutical; pheur; ph eur; ep; food; fcc; technical; technisch; technique; tech; tecnico; técnico");
        put(words, "denatured", "denat; denatured; vergällt; dénaturé; denaturato; desnaturalizado");
        put(words, "anhydrous", "anhydrous; wasserfrei; anhydre; anidro; anhidro; anidra");
        put(words, "monohydrate", "monohydrate; monohydrat");
        put(words, "dihydrate", "dihydrate; dihydrat");
        put(words, "hexahydrate", "hexahydrate; hexahydrat; heptahydrate; heptahydrat");
        put(
                words,
                "nano",
                "nano; micronised; micronized; mikronisiert; micronisé; coated; gecoatet; beschichtet; uncoated; enrobé");
        put(words, "d", "d");
        put(words, "dl", "dl");
        put(words, "l", "l");
        put(words, "lavender", "lavender; lavendel; lavande; lavanda");
        put(words, "rose", "rose; rosa; rosen");
        put(words, "vanilla", "vanilla; vanille; vaniglia; vainilla");
        put(words, "citrus", "citrus; zitrus; agrumes; agrumi");
        put(words, "unscented", "unscented; unparfümiert; fragrancefree; parfümfrei; sans parfum");
        put(words, "white", "white; weiß; weiss; blanche; blanc; bianca; bianco; blanca; blanco; bleached; gebleicht");
        put(words, "yellow", "yellow; gelb; jaune; gialla; giallo; amarilla; amarillo");
        put(words, "red", "red; rot; rouge; rosso; rojo");
        put(words, "black", "black; schwarz; noir; nero; negro");
        put(words, "brown", "brown; braun; brun; marrone; marrón");
        put(words, "blue", "blue; blau; bleu; blu; azul");
        put(words, "green", "green; grün; vert; verde");
        return words;
    }

    private static void put(Map<String, String> words, String grade, String spellings) {
        for (String spelling : spellings.split(";", -1)) {
            List<String> keys = new ArrayList<>();
            for (String word : spelling.strip().split(" ", -1)) {
                keys.add(ListWords.key(word));
            }
            words.put(String.join(" ", keys), grade);
        }
    }
}

package perkilo.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What kind of product a formula makes, as far as limits of the law, and usual levels, depend on it.
 *
 * <p>A person types one or several words. What is not said about leave-on or rinse-off counts as leave-on, because its
 * limits are the stricter ones nearly everywhere; what is not said about the part of the body is not known.
 */
public final class ProductKind {

    /** What a word says something about. */
    public enum About {
        /** How long the product stays. */
        CONTACT,
        /** Where it is put. */
        PART,
        /** How it comes out. */
        FORM,
        /** Whom it is for. */
        USER
    }

    /** The words that may be typed. */
    public enum Word {
        LEAVE_ON("leave-on", About.CONTACT, null),
        RINSE_OFF("rinse-off", About.CONTACT, null, "wash-off", "washoff"),
        FACE("face", About.PART, null, "facial"),
        EYE("eye", About.PART, null, "eyes", "around the eyes"),
        LIPS("lips", About.PART, null, "lip"),
        BODY("body", About.PART, null),
        HANDS("hands", About.PART, null, "hand"),
        HAIR("hair", About.PART, null, "scalp", "hair and scalp"),
        NAILS("nails", About.PART, null, "nail"),
        UNDERARM("underarm", About.PART, null, "deodorant"),
        /** In the mouth; what is swallowed in part. */
        ORAL("oral", About.PART, null, "oral care", "mouth"),
        TOOTHPASTE("toothpaste", About.PART, ORAL),
        MOUTHWASH("mouthwash", About.PART, ORAL),
        SOAP("soap", About.FORM, null),
        PERFUME("perfume", About.FORM, null),
        SPRAY("spray", About.FORM, null, "pump spray", "sprays"),
        PROPELLANT_SPRAY("propellant spray", About.FORM, SPRAY, "aerosol", "aerosol spray"),
        UNDER_3("under 3", About.USER, null, "children under 3", "baby", "babies", "under three");

        private final String word;
        private final About about;
        private final @Nullable Word implied;

        @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable set
        private final Set<String> keys;

        Word(String word, About about, @Nullable Word implied, String... also) {
            this.word = word;
            this.about = about;
            this.implied = implied;
            this.keys = Arrays.stream(also).map(Word::key).collect(Collectors.toUnmodifiableSet());
        }

        /** As a person reads and types it. */
        public String word() {
            return word;
        }

        /** What it says something about. */
        public About about() {
            return about;
        }

        private boolean isSpelled(String key) {
            return key(word).equals(key) || keys.contains(key);
        }

        /** The word that a person typed, in any case and with or without hyphens; empty if it is not one of these. */
        public static Optional<Word> named(String typed) {
            String key = key(typed);
            return Arrays.stream(values()).filter(word -> word.isSpelled(key)).findFirst();
        }

        private static String key(String word) {
            StringBuilder key = new StringBuilder();
            String lower = word.toLowerCase(Locale.ROOT);
            for (int at = 0; at < lower.length(); at++) {
                if (Character.isLetterOrDigit(lower.charAt(at))) {
                    key.append(lower.charAt(at));
                }
            }
            return key.toString();
        }
    }

    /** Left on; nothing else is said. */
    public static final ProductKind LEAVE_ON = new ProductKind(EnumSet.noneOf(Word.class));

    /** Rinsed off; nothing else is said. */
    public static final ProductKind RINSE_OFF = new ProductKind(EnumSet.of(Word.RINSE_OFF));

    /** The words that a person may type, in their order. */
    public static final List<String> WORDS =
            Arrays.stream(Word.values()).map(Word::word).toList();

    /** A product for the mouth is one only if a person says so. */
    private static final Set<Word> ORALS =
            Collections.unmodifiableSet(EnumSet.of(Word.ORAL, Word.TOOTHPASTE, Word.MOUTHWASH));

    private final Set<Word> typed;
    private final Set<Word> all;

    private ProductKind(Set<Word> typed) {
        this.typed = Collections.unmodifiableSet(typed);
        EnumSet<Word> words = typed.isEmpty() ? EnumSet.noneOf(Word.class) : EnumSet.copyOf(typed);
        for (Word word : typed) {
            if (word.implied != null) {
                words.add(word.implied);
            }
        }
        if (words.stream().noneMatch(word -> word.about == About.CONTACT)) {
            words.add(
                    words.contains(Word.TOOTHPASTE) || words.contains(Word.MOUTHWASH) ? Word.RINSE_OFF : Word.LEAVE_ON);
        }
        this.all = Collections.unmodifiableSet(words);
    }

    /** The kind that some words describe; none of them may contradict another. */
    public static ProductKind of(Set<Word> typed) {
        return new ProductKind(typed.isEmpty() ? EnumSet.noneOf(Word.class) : EnumSet.copyOf(typed));
    }

    /** The kind that some words describe; for code and tests. */
    public static ProductKind of(Word... typed) {
        return of(Set.of(typed));
    }

    /**
     * The parts of a cell that are words of their own: {@code rinse-off; hair} has two.
     *
     * @param cell as typed
     */
    public static List<String> parts(String cell) {
        return Arrays.stream(cell.split("[;,/+&\n]", 0))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    /** Whether it is rinsed off; false if nothing is said. */
    public boolean rinseOff() {
        return all.contains(Word.RINSE_OFF);
    }

    /** Whether a word holds, because it was typed, follows from one that was, or from a blank cell. */
    public boolean is(Word word) {
        return all.contains(word);
    }

    /** Whether the words say something about this. */
    public boolean says(About about) {
        return typed.stream().anyMatch(word -> word.about == about);
    }

    /** This kind for each part of the body that may be meant; this one alone if a part is said. */
    public List<ProductKind> possible() {
        if (says(About.PART)) {
            return List.of(this);
        }
        return Arrays.stream(Word.values())
                .filter(word -> word.about == About.PART && !ORALS.contains(word))
                .map(part -> {
                    EnumSet<Word> words = EnumSet.of(part);
                    words.addAll(typed);
                    return new ProductKind(words);
                })
                .toList();
    }

    /** The words as they are written in a cell: {@code rinse-off; hair}. */
    public String words() {
        EnumSet<Word> written = typed.isEmpty() ? EnumSet.noneOf(Word.class) : EnumSet.copyOf(typed);
        written.addAll(all.stream().filter(word -> word.about == About.CONTACT).toList());
        return written.stream().map(Word::word).collect(Collectors.joining("; "));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ProductKind kind && all.equals(kind.all);
    }

    @Override
    public int hashCode() {
        return all.hashCode();
    }

    @Override
    public String toString() {
        return words();
    }
}

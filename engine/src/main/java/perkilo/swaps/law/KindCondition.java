package perkilo.swaps.law;

import java.util.ArrayList;
import java.util.List;
import perkilo.model.ProductKind;
import perkilo.model.ProductKind.About;
import perkilo.model.ProductKind.Word;

/**
 * For which kinds of product a rule is: {@code rinse-off & !hair | soap}.
 *
 * <p>What a person did not say about the part of the body may be anything, so the answer may be that it is not known. A
 * product for the mouth, for small children, or in a special form is one only if a person says so.
 */
final class KindCondition {

    /** Whether a kind of product meets a condition. */
    enum Truth {
        NO,
        UNKNOWN,
        YES;

        private Truth not() {
            return this == YES ? NO : this == NO ? YES : UNKNOWN;
        }

        private Truth and(Truth other) {
            return compareTo(other) <= 0 ? this : other;
        }

        private Truth or(Truth other) {
            return compareTo(other) >= 0 ? this : other;
        }
    }

    private record Term(Word word, boolean negated) {}

    private final List<List<Term>> alternatives;

    private KindCondition(List<List<Term>> alternatives) {
        this.alternatives = alternatives;
    }

    /** The condition that a table has; {@code any} is met by every kind. */
    static KindCondition parse(String text) {
        List<List<Term>> alternatives = new ArrayList<>();
        for (String alternative : text.split("\\|", 0)) {
            List<Term> terms = new ArrayList<>();
            for (String part : alternative.split("&", 0)) {
                String word = part.strip();
                boolean negated = word.startsWith("!");
                if (!word.equals("any")) {
                    terms.add(new Term(
                            Word.named(negated ? word.substring(1) : word)
                                    .orElseThrow(() -> new IllegalStateException("no kind of product: " + word)),
                            negated));
                }
            }
            alternatives.add(List.copyOf(terms));
        }
        return new KindCondition(List.copyOf(alternatives));
    }

    /** Whether a kind of product meets this. */
    Truth holds(ProductKind kind) {
        Truth any = Truth.NO;
        for (List<Term> terms : alternatives) {
            Truth all = Truth.YES;
            for (Term term : terms) {
                Truth one = is(kind, term.word());
                all = all.and(term.negated() ? one.not() : one);
            }
            any = any.or(all);
        }
        return any;
    }

    private static Truth is(ProductKind kind, Word word) {
        if (kind.is(word)) {
            return Truth.YES;
        }
        boolean said = word.about() != About.PART
                || kind.says(About.PART)
                || word == Word.ORAL
                || word == Word.TOOTHPASTE
                || word == Word.MOUTHWASH;
        return said ? Truth.NO : Truth.UNKNOWN;
    }
}

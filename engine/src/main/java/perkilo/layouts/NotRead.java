package perkilo.layouts;

import perkilo.origin.Origin;

/**
 * Something on a list that is not used.
 *
 * @param where its first cell
 * @param what a header, or the words of a line
 * @param why a sentence, from {@link NotReadMessages}
 */
public record NotRead(Origin where, String what, String why) {

    /** Whether it is a line with a figure that speaks of money or per cent, and changes no price. */
    public boolean isOfMoney() {
        return why.equals(NotReadMessages.lineNotUnderstood())
                && what.codePoints().anyMatch(Character::isDigit);
    }
}

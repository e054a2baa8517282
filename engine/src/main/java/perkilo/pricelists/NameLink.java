package perkilo.pricelists;

/**
 * A name on a list that is kept under a known name.
 *
 * @param listed the name on the list
 * @param name the known name
 * @param by how it was found, such as {@code INCI}; empty for a person's own answer
 * @param words the same as a sentence
 */
public record NameLink(String listed, String name, String by, String words) {}

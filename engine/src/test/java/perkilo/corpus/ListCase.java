package perkilo.corpus;

/**
 * A list as it arrives.
 *
 * @param file its name
 * @param bytes its content
 * @param truth what it says
 * @param layout how it is laid out, in words
 */
@SuppressWarnings("ArrayRecordComponent")
record ListCase(String file, byte[] bytes, Truth truth, String layout) {}

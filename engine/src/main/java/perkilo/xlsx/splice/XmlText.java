package perkilo.xlsx.splice;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** XML as text: escapes and tags. */
final class XmlText {

    private static final Pattern REFERENCE = Pattern.compile("&(#[xX]?[0-9A-Fa-f]+|\\w+);");

    private static final Map<String, String> NAMED =
            Map.of("amp", "&", "lt", "<", "gt", ">", "quot", "\"", "apos", "'");

    private XmlText() {}

    /** Escapes words for an attribute or for the text between tags. */
    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("\n", "&#10;")
                .replace("\t", "&#9;")
                .replace("\r", "&#13;");
    }

    /** Resolves the escapes in words. */
    static String unescaped(String xml) {
        if (xml.indexOf('&') < 0) {
            return xml;
        }
        Matcher matcher = REFERENCE.matcher(xml);
        return matcher.replaceAll(found -> Matcher.quoteReplacement(meaning(found.group(1), found.group())));
    }

    private static String meaning(String reference, String otherwise) {
        if (!reference.startsWith("#")) {
            return NAMED.getOrDefault(reference, otherwise);
        }
        boolean hexadecimal = reference.startsWith("#x") || reference.startsWith("#X");
        try {
            int codePoint = hexadecimal
                    ? Integer.parseInt(reference.substring(2), 16)
                    : Integer.parseInt(reference.substring(1));
            return Character.toString(codePoint);
        } catch (IllegalArgumentException e) {
            return otherwise;
        }
    }

    /** An opening tag. */
    static String openTag(String name, Map<String, String> attributes, boolean empty) {
        StringBuilder tag = new StringBuilder("<").append(name);
        attributes.forEach((key, value) ->
                tag.append(' ').append(key).append("=\"").append(escaped(value)).append('"'));
        return tag.append(empty ? "/>" : ">").toString();
    }
}

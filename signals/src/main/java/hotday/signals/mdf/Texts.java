package hotday.signals.mdf;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names, units and words: plain in TX blocks, inside the element {@code TX} of XML in MD blocks. */
final class Texts {
    private static final int LONGEST = 1 << 20;
    private static final Pattern PLAIN = Pattern.compile("<TX(?:\\s[^>]*)?>(.*?)</TX>", Pattern.DOTALL);
    private static final Pattern ENTITY = Pattern.compile("&(#x?)?(\\w{1,8});");

    private Texts() {}

    /** The text a link leads to; empty where it leads nowhere. */
    static String at(BlockFile file, long link, String from) {
        if (link == 0) {
            return "";
        }
        Block block = file.block(link, from, "##TX", "##MD");
        if (block.data().limit() > LONGEST) {
            throw block.broken("holds a text of " + block.data().limit() + " bytes, at most " + LONGEST + " are read");
        }
        byte[] bytes = block.data().array();
        int end = 0;
        while (end < bytes.length && bytes[end] != 0) {
            end++;
        }
        String text = new String(bytes, 0, end, StandardCharsets.UTF_8);
        return block.id().equals("##TX") ? text : inside(text);
    }

    private static String inside(String xml) {
        Matcher m = PLAIN.matcher(xml);
        if (!m.find()) {
            return "";
        }
        String text = m.group(1);
        return text.startsWith("<![CDATA[") && text.endsWith("]]>")
                ? text.substring(9, text.length() - 3)
                : ENTITY.matcher(text).replaceAll(e -> Matcher.quoteReplacement(character(e.group(1), e.group(2))));
    }

    private static String character(String number, String name) {
        if (number != null) {
            return numbered(name, number.length() == 2 ? 16 : 10);
        }
        return switch (name) {
            case "lt" -> "<";
            case "gt" -> ">";
            case "amp" -> "&";
            case "quot" -> "\"";
            case "apos" -> "'";
            default -> "&" + name + ";";
        };
    }

    private static String numbered(String digits, int base) {
        try {
            return Character.toString(Integer.parseInt(digits, base));
        } catch (IllegalArgumentException none) {
            return "?";
        }
    }
}

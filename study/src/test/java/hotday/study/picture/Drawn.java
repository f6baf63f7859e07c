package hotday.study.picture;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** An SVG picture read back by an XML parser. */
final class Drawn {
    private final Document document;

    private Drawn(Document document) {
        this.document = document;
    }

    /** Reads a picture; fails the test when it is no well-formed XML. */
    static Drawn of(String svg) {
        try {
            return new Drawn(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg))));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError("no well-formed XML: " + e.getMessage() + "\n" + svg, e);
        }
    }

    List<Element> all(String tag) {
        NodeList found = document.getElementsByTagName(tag);
        List<Element> out = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            out.add((Element) found.item(i));
        }
        return out;
    }

    List<String> texts() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** Left and right end of a text by the canvas's own measure. */
    static double[] span(Element text) {
        double x = number(text, "x");
        double width = new SvgCanvas(1, 1, "").width(text.getTextContent(), number(text, "font-size"));
        return switch (text.getAttribute("text-anchor")) {
            case "start" -> new double[] {x, x + width};
            case "middle" -> new double[] {x - 0.5 * width, x + 0.5 * width};
            default -> new double[] {x - width, x};
        };
    }

    /** Points of every line that has any. */
    List<List<String>> lines() {
        return all("polyline").stream()
                .map(e -> e.getAttribute("points").strip())
                .filter(p -> !p.isEmpty())
                .map(p -> List.of(p.split(" ")))
                .toList();
    }
}

package hotday.validation.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;

/** Modules as boxes with the packages found in them; the arrows are those that {@link ArrowsTest} holds. */
final class Picture {
    private static final int INNER = 22;
    private static final int BOX = INNER + 2;
    private static final int GAP = 6;
    private static final int MIDDLE = BOX / 2;

    private final JavaClasses classes;

    private Picture(JavaClasses classes) {
        this.classes = classes;
    }

    /** The picture, every line ended, no blanks at line ends. */
    static String of(JavaClasses classes) {
        return new Picture(classes).draw();
    }

    private String draw() {
        List<String> lines = new ArrayList<>();
        lines.addAll(centred(box("app")));
        lines.addAll(centred(arrow(1)));
        lines.addAll(centred(box("study")));
        lines.add(fork('┌', '┴', '┐'));
        lines.addAll(beside(leftColumn(), rightColumn()));
        lines.add(fork('└', '┬', '┘'));
        lines.addAll(centred(arrow(0)));
        lines.addAll(centred(box("core")));
        StringBuilder out = new StringBuilder();
        for (String line : lines) {
            out.append(line.stripTrailing()).append('\n');
        }
        return out.toString();
    }

    private List<String> leftColumn() {
        List<String> column = new ArrayList<>(arrow(0));
        column.addAll(box("vehicle"));
        column.addAll(arrow(1));
        column.addAll(box("physics"));
        return column;
    }

    private List<String> rightColumn() {
        List<String> column = new ArrayList<>(arrow(0));
        column.addAll(box("signals"));
        return column;
    }

    private List<String> box(String module) {
        List<String> lines = new ArrayList<>();
        lines.add("┌" + "─".repeat(INNER) + "┐");
        lines.add("│" + padded(" " + module.toUpperCase(Locale.ROOT), INNER) + "│");
        for (String name : packages(module)) {
            lines.add("│" + padded("   " + name, INNER) + "│");
        }
        lines.add("└" + "─".repeat(INNER) + "┘");
        return lines;
    }

    private SortedSet<String> packages(String module) {
        String prefix = "hotday." + module + ".";
        SortedSet<String> names = new TreeSet<>(Comparator.naturalOrder());
        for (JavaClass c : classes) {
            if (c.getPackageName().startsWith(prefix)) {
                names.add(c.getPackageName().substring(prefix.length()));
            }
        }
        return names;
    }

    private static List<String> arrow(int length) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            lines.add(rail("│"));
        }
        lines.add(rail("▼"));
        return lines;
    }

    private static String rail(String mark) {
        return padded(" ".repeat(MIDDLE) + mark, BOX);
    }

    /** From the middle box to both columns, or back from them. */
    private static String fork(char left, char middle, char right) {
        String arm = "─".repeat((BOX + GAP) / 2 - 1);
        return " ".repeat(MIDDLE) + left + arm + middle + arm + right;
    }

    private static List<String> centred(List<String> lines) {
        String indent = " ".repeat((BOX + GAP) / 2);
        return lines.stream().map(line -> indent + line).toList();
    }

    /** Two columns of boxes; a rail fills the shorter one down to the end of the longer. */
    private static List<String> beside(List<String> left, List<String> right) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            lines.add(at(left, i) + " ".repeat(GAP) + at(right, i));
        }
        return lines;
    }

    private static String at(List<String> column, int line) {
        return line < column.size() ? column.get(line) : rail("│");
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}

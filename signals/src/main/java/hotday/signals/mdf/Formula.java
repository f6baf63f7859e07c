package hotday.signals.mdf;

import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * A formula of one number X: + - * /, brackets, and functions that mean the same to everybody. What is spelled alike and
 * means different things (^, log) is refused. Without state.
 */
final class Formula {
    private static final int LONGEST = 4096;
    private static final int DEEPEST = 64;
    private static final Map<String, DoubleUnaryOperator> FUNCTIONS = Map.ofEntries(
            Map.entry("sin", Math::sin),
            Map.entry("cos", Math::cos),
            Map.entry("tan", Math::tan),
            Map.entry("asin", Math::asin),
            Map.entry("acos", Math::acos),
            Map.entry("atan", Math::atan),
            Map.entry("sinh", Math::sinh),
            Map.entry("cosh", Math::cosh),
            Map.entry("tanh", Math::tanh),
            Map.entry("exp", Math::exp),
            Map.entry("sqrt", Math::sqrt),
            Map.entry("abs", Math::abs),
            Map.entry("ln", Math::log),
            Map.entry("log10", Math::log10));

    private final DoubleUnaryOperator value;

    private Formula(DoubleUnaryOperator value) {
        this.value = value;
    }

    /** Throws {@link IllegalArgumentException} with what is not understood, and where. */
    static Formula of(String text) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("it is longer than " + LONGEST + " characters");
        }
        return new Formula(new Parser(text).all());
    }

    double of(double x) {
        return value.applyAsDouble(x);
    }

    private static final class Parser {
        private final String text;
        private int at;
        private int depth;

        Parser(String text) {
            this.text = text;
        }

        DoubleUnaryOperator all() {
            DoubleUnaryOperator sum = sum();
            if (peek() != 0) {
                throw unclear();
            }
            return sum;
        }

        private IllegalArgumentException unclear() {
            String there = at < text.length() ? "'" + text.charAt(at) + "'" : "the end";
            return new IllegalArgumentException("not understood at character " + (at + 1) + ", " + there);
        }

        /** The next character that is no blank; 0 at the end. */
        private char peek() {
            while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
                at++;
            }
            return at < text.length() ? text.charAt(at) : 0;
        }

        private boolean takes(char c) {
            boolean there = peek() == c;
            at += there ? 1 : 0;
            return there;
        }

        private DoubleUnaryOperator sum() {
            if (++depth > DEEPEST) {
                throw new IllegalArgumentException("brackets go deeper than " + DEEPEST);
            }
            DoubleUnaryOperator left = product();
            while (peek() == '+' || peek() == '-') {
                left = text.charAt(at++) == '+'
                        ? both(left, product(), (a, b) -> a + b)
                        : both(left, product(), (a, b) -> a - b);
            }
            depth--;
            return left;
        }

        private DoubleUnaryOperator product() {
            DoubleUnaryOperator left = signed();
            while (peek() == '*' || peek() == '/') {
                left = text.charAt(at++) == '*'
                        ? both(left, signed(), (a, b) -> a * b)
                        : both(left, signed(), (a, b) -> a / b);
            }
            return left;
        }

        private static DoubleUnaryOperator both(DoubleUnaryOperator a, DoubleUnaryOperator b, DoubleBinaryOperator by) {
            return x -> by.applyAsDouble(a.applyAsDouble(x), b.applyAsDouble(x));
        }

        private DoubleUnaryOperator signed() {
            boolean minus = false;
            while (peek() == '-' || peek() == '+') {
                minus ^= text.charAt(at++) == '-';
            }
            DoubleUnaryOperator size = single();
            return minus ? x -> -size.applyAsDouble(x) : size;
        }

        private DoubleUnaryOperator single() {
            char c = peek();
            if (takes('(')) {
                return closed(sum());
            }
            if (c >= '0' && c <= '9' || c == '.') {
                double constant = number();
                return x -> constant;
            }
            return Character.isLetter(c) ? named() : refused();
        }

        private DoubleUnaryOperator refused() {
            throw unclear();
        }

        private <T> T closed(T inside) {
            if (!takes(')')) {
                throw unclear();
            }
            return inside;
        }

        private double number() {
            int from = at;
            digits();
            if (at < text.length() && text.charAt(at) == '.') {
                at++;
                digits();
            }
            if (at + 1 < text.length() && (text.charAt(at) | 0x20) == 'e') {
                char next = text.charAt(at + 1);
                at += next == '-' || next == '+' ? 2 : 1;
                digits();
            }
            try {
                return Double.parseDouble(text.substring(from, at));
            } catch (NumberFormatException none) {
                at = from;
                throw unclear();
            }
        }

        private void digits() {
            while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
                at++;
            }
        }

        private DoubleUnaryOperator named() {
            int from = at;
            while (at < text.length() && Character.isLetterOrDigit(text.charAt(at))) {
                at++;
            }
            String name = text.substring(from, at);
            if (name.equalsIgnoreCase("X") || name.equalsIgnoreCase("X1")) {
                return x -> x;
            }
            DoubleUnaryOperator function = FUNCTIONS.get(name);
            if (function == null && !name.equals("pow") || !takes('(')) {
                throw new IllegalArgumentException("'" + name + "' is no function that is known here");
            }
            DoubleUnaryOperator first = sum();
            if (function != null) {
                return closed(x -> function.applyAsDouble(first.applyAsDouble(x)));
            }
            if (!takes(',')) {
                throw unclear();
            }
            return closed(both(first, sum(), Math::pow));
        }
    }
}

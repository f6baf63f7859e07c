package hotday.signals.channel;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads stamps of a wall clock: {@code hh:mm:ss[.fraction] [AM|PM]}, with or without a date before it. */
final class Clock {
    static final double DAY = 86400.0;
    /** A jump back by more than this on a clock without a date is midnight. */
    private static final double MIDNIGHT_JUMP = 0.5 * DAY;

    private static final Pattern DATE = Pattern.compile("(\\d{4})[-/.](\\d{2})[-/.](\\d{2})[T ]\\s*(.*)");
    private static final Pattern TIME =
            Pattern.compile("(\\d{1,2}):(\\d{2}):(\\d{2}(?:[.,]\\d{0,9})?)\\s*(AM|PM)?\\s*(?:Z|[+-]\\d{2}:?\\d{2})?");

    private Clock() {}

    /** Seconds since midnight, or since 1970 where a date stands before; NaN when it is no clock reading. */
    static double seconds(String cell) {
        double plain = plain(cell);
        if (!Double.isNaN(plain)) {
            return plain;
        }
        Matcher date = DATE.matcher(cell);
        if (!date.matches()) {
            return timeOfDay(cell);
        }
        try {
            LocalDate day = LocalDate.of(
                    Integer.parseInt(date.group(1)), Integer.parseInt(date.group(2)), Integer.parseInt(date.group(3)));
            return day.toEpochDay() * DAY + timeOfDay(date.group(4));
        } catch (DateTimeException e) {
            return Double.NaN;
        }
    }

    /** The common form {@code hh:mm:ss.SSS} without a pattern: a million of them are read from a long log. */
    private static double plain(String cell) {
        int length = cell.length();
        if (length < 8 || cell.charAt(2) != ':' || cell.charAt(5) != ':' || (length > 8 && cell.charAt(8) != '.')) {
            return Double.NaN;
        }
        double fraction = 0.0;
        double scale = 0.1;
        for (int i = 9; i < length; i++) {
            int digit = cell.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return Double.NaN;
            }
            fraction += digit * scale;
            scale *= 0.1;
        }
        int hours = twoDigits(cell, 0);
        int minutes = twoDigits(cell, 3);
        int seconds = twoDigits(cell, 6);
        boolean right = hours >= 0 && hours < 24 && minutes >= 0 && minutes < 60 && seconds >= 0 && seconds <= 60;
        return right ? hours * 3600.0 + minutes * 60.0 + seconds + fraction : Double.NaN;
    }

    private static int twoDigits(String cell, int at) {
        int tens = cell.charAt(at) - '0';
        int ones = cell.charAt(at + 1) - '0';
        return tens < 0 || tens > 9 || ones < 0 || ones > 9 ? -1 : 10 * tens + ones;
    }

    private static double timeOfDay(String text) {
        Matcher m = TIME.matcher(text.toUpperCase(Locale.ROOT));
        if (!m.matches()) {
            return Double.NaN;
        }
        int hours = Integer.parseInt(m.group(1));
        int minutes = Integer.parseInt(m.group(2));
        double seconds = Double.parseDouble(m.group(3).replace(',', '.'));
        if (m.group(4) != null) {
            if (hours < 1 || hours > 12) {
                return Double.NaN;
            }
            hours = hours % 12 + (m.group(4).equals("PM") ? 12 : 0);
        }
        return hours < 24 && minutes < 60 && seconds < 61 ? hours * 3600.0 + minutes * 60.0 + seconds : Double.NaN;
    }

    /** Adds a day wherever a clock without a date passes midnight; works in place. */
    static void passMidnight(double[] time) {
        double days = 0.0;
        double last = time.length == 0 ? 0.0 : time[0];
        for (int i = 1; i < time.length; i++) {
            double stamp = time[i];
            days += stamp < last - MIDNIGHT_JUMP ? DAY : 0.0;
            last = stamp;
            time[i] = stamp + days;
        }
    }
}

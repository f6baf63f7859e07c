package hotday.signals.channel;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads stamps of a wall clock: {@code hh:mm:ss[.fraction] [AM|PM]}, with or without a date before it. */
public final class Clock {
    static final double DAY = 86400.0;
    /** A jump back by more than this on a clock without a date is midnight. */
    private static final double MIDNIGHT_JUMP = 0.5 * DAY;

    /** Stamps from here on have a date: no clock without one runs for a third of a year, s. */
    private static final double DATED = 1e7;

    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})[T ]\\s*(.*)");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})[T ]\\s*(.*)");
    /** Day or month first? Nobody can tell, so that only the time of day counts. */
    private static final Pattern EITHER_FIRST = Pattern.compile("\\d{1,2}[-/]\\d{1,2}[-/]\\d{4}[T ]\\s*(.*)");

    private static final Pattern TIME = Pattern.compile(
            "(\\d{1,2}):(\\d{2}):(\\d{2}(?:[.,]\\d{0,9})?)\\s*(AM|PM)?\\s*(?:Z|UTC|([+-])(\\d{2}):?(\\d{2})?)?");

    /** As spreadsheets show a short time: minutes, seconds and a fraction, which tells it from hours and minutes. */
    private static final Pattern MINUTES = Pattern.compile("(\\d{1,3}):(\\d{2}[.,]\\d{1,9})");

    private Clock() {}

    /** Seconds since midnight, or since 1970 where a date stands before; NaN when it is no clock reading. */
    public static double seconds(String cell) {
        double plain = plain(cell);
        if (!Double.isNaN(plain)) {
            return plain;
        }
        Matcher year = YEAR_FIRST.matcher(cell);
        if (year.matches()) {
            return dated(year.group(1), year.group(2), year.group(3), year.group(4));
        }
        Matcher day = DAY_FIRST.matcher(cell);
        if (day.matches()) {
            return dated(day.group(3), day.group(2), day.group(1), day.group(4));
        }
        Matcher minutes = MINUTES.matcher(cell);
        if (minutes.matches()) {
            double seconds = Double.parseDouble(minutes.group(2).replace(',', '.'));
            return seconds < 60.0 ? Integer.parseInt(minutes.group(1)) * 60.0 + seconds : Double.NaN;
        }
        Matcher either = EITHER_FIRST.matcher(cell);
        return timeOfDay(either.matches() ? either.group(1) : cell, false);
    }

    private static double dated(String year, String month, String day, String time) {
        try {
            LocalDate date = LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
            return date.toEpochDay() * DAY + timeOfDay(time, true);
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

    /** @param zoned true to count from midnight in Greenwich where the zone is told; needs a date */
    private static double timeOfDay(String text, boolean zoned) {
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
        double east = zoned ? secondsEast(m) : 0.0;
        return hours < 24 && minutes < 60 && seconds < 61
                ? hours * 3600.0 + minutes * 60.0 + seconds - east
                : Double.NaN;
    }

    private static double secondsEast(Matcher m) {
        if (m.group(5) == null) {
            return 0.0;
        }
        int minutes = m.group(7) == null ? 0 : Integer.parseInt(m.group(7));
        double size = Integer.parseInt(m.group(6)) * 3600.0 + minutes * 60.0;
        return m.group(5).equals("-") ? -size : size;
    }

    /** A stamp as people read it: 18:57:27.5, with a date where there was one (in Greenwich where the zone was told). */
    static String shown(double seconds) {
        double thousandth = Math.rint(1000.0 * seconds) / 1000.0;
        double days = Math.floor(thousandth / DAY);
        double rest = thousandth - days * DAY;
        String day = seconds < DATED ? "" : LocalDate.ofEpochDay((long) days) + " ";
        int whole = (int) rest;
        String fraction =
                String.format(Locale.ROOT, "%.3f", rest - whole).substring(1).replaceAll("\\.?0+$", "");
        return day + String.format(Locale.ROOT, "%02d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60) + fraction;
    }

    /** Adds a day wherever a clock passes midnight; stamps with a date have it said already. Works in place. */
    static void passMidnight(double[] time) {
        double days = 0.0;
        double last = time.length == 0 ? 0.0 : time[0];
        for (int i = 1; i < time.length; i++) {
            double stamp = time[i];
            days += last < DATED && stamp < last - MIDNIGHT_JUMP ? DAY : 0.0;
            last = stamp;
            time[i] = stamp + days;
        }
    }
}

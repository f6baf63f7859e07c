package hotday.signals.framelog;

/**
 * A time stamp: a decimal number, or a date with a time of day. Digits are gathered in a whole number and divided once, so
 * that 15 of them give the nearest double.
 */
final class Stamp {
    static final double[] TEN_TO = new double[23];

    static {
        double power = 1;
        for (int i = 0; i < TEN_TO.length; i++) {
            TEN_TO[i] = power;
            power *= 10;
        }
    }

    /** Another digit still fits behind any smaller number. */
    private static final long MOST = Long.MAX_VALUE / 10;

    private static final int SECONDS_A_DAY = 86_400;

    private double seconds;
    private int end;
    private long mantissa;

    /** s, after a stamp was read. */
    double seconds() {
        return seconds;
    }

    /** Behind the stamp; where it does not read on when it was none. */
    int end() {
        return end;
    }

    /**
     * A number with a point, and the mark besides; an exponent may follow.
     *
     * @param mark taken for a decimal point too
     * @param decimals decimal places of a second that the unit is
     */
    boolean number(byte[] b, int from, int to, char mark, int decimals) {
        boolean negative = from < to && b[from] == '-';
        begin(negative ? from + 1 : from);
        int first = end;
        int places = 0;
        gather(b, to);
        if (end == first || end < to && Digits.decimal(b[end]) >= 0) {
            return false;
        }
        if (end < to && (b[end] == '.' || b[end] == mark)) {
            places = fraction(b, to);
        }
        return scaled(negative, places + decimals - exponent(b, to));
    }

    private void begin(int at) {
        end = at;
        mantissa = 0;
    }

    /** Takes digits as long as the number holds them. */
    private void gather(byte[] b, int to) {
        for (; end < to && mantissa < MOST; end++) {
            int digit = Digits.decimal(b[end]);
            if (digit < 0) {
                return;
            }
            mantissa = mantissa * 10 + digit;
        }
    }

    /** How many places were taken; what is too fine for the number is passed over. */
    private int fraction(byte[] b, int to) {
        int first = ++end;
        gather(b, to);
        int places = end - first;
        while (end < to && Digits.decimal(b[end]) >= 0) {
            end++;
        }
        return places;
    }

    /** 0 where there is none. */
    private int exponent(byte[] b, int to) {
        if (end + 1 >= to || (b[end] | 0x20) != 'e') {
            return 0;
        }
        int at = end + 1;
        boolean negative = b[at] == '-';
        at += negative || b[at] == '+' ? 1 : 0;
        int value = 0;
        int first = at;
        for (; at < to && at < first + 2 && Digits.decimal(b[at]) >= 0; at++) {
            value = 10 * value + Digits.decimal(b[at]);
        }
        end = at > first ? at : end;
        return negative ? -value : value;
    }

    private boolean scaled(boolean negative, int places) {
        if (places >= TEN_TO.length || places <= -TEN_TO.length) {
            return false;
        }
        double size = places >= 0 ? mantissa / TEN_TO[places] : mantissa * TEN_TO[-places];
        seconds = negative ? -size : size;
        return true;
    }

    /** A date and a time of day ({@code 2024-03-31 23:59:59.123456}), seconds from 1970 on as if the clock were UTC. */
    boolean date(byte[] b, int from, int to) {
        begin(from);
        long year = part(b, to, 4, '-');
        long month = part(b, to, 2, '-');
        long day = part(b, to, 2, ' ');
        long hour = part(b, to, 2, ':');
        long minute = part(b, to, 2, ':');
        if (year < 0 || month < 1 || month > 12 || day < 1 || day > 31 || hour < 0 || hour > 23) {
            return false;
        }
        if (minute < 0 || minute > 59 || !number(b, end, to, '.', 0) || seconds < 0 || seconds >= 61) {
            return false;
        }
        seconds += SECONDS_A_DAY * days(year, month, day) + 3600 * hour + 60 * minute;
        return true;
    }

    /** -1 when it is not so many digits with that mark behind them. */
    private long part(byte[] b, int to, int count, char mark) {
        if (end < 0 || end + count >= to || b[end + count] != mark) {
            return -1;
        }
        int value = Digits.number(b, end, end + count, 10, 9999);
        end += value < 0 ? 0 : count + 1;
        return value;
    }

    /** Days from 1970-01-01 in the Gregorian calendar; counts years from March, so that leap days come last. */
    private static long days(long year, long month, long day) {
        long y = month > 2 ? year : year - 1;
        long monthFromMarch = (month + 9) % 12;
        long inYear = (153 * monthFromMarch + 2) / 5 + day - 1;
        return 365 * y + y / 4 - y / 100 + y / 400 + inYear - 719_468;
    }
}

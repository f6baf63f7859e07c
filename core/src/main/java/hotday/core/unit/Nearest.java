package hotday.core.unit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that somebody most likely meant. */
public final class Nearest {
    private Nearest() {}

    /** The known word closest by insertions, deletions and changes, if it is close enough to be meant. */
    public static Optional<String> to(String typed, List<String> known) {
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String word : known) {
            int distance = distance(typed.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = word;
            }
        }
        return least <= Math.max(1, typed.length() / 3) && least < typed.length()
                ? Optional.of(best)
                : Optional.empty();
    }

    /** Edit distance (Levenshtein 1966), a swap of neighbours counting as one (restricted Damerau). */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                } else {
                    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                    d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + change);
                    if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                        d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                    }
                }
            }
        }
        return d[a.length()][b.length()];
    }
}

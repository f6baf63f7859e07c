package hotday.vehicle.cases;

import java.util.List;

/**
 * The cases every build is judged on. The loaded climb follows the published accounts of the towing-grade practice (SAE
 * J2807: 5 percent, not below 40 mph, A/C on); the others are common practice, no source.
 */
public final class StandardCases {
    private static final double KMH = 1.0 / 3.6;

    private static final List<Case> ALL = List.of(
            new Case("hot-idle", "Hot idle in gear, A/C on", 0.0, 0.0, true),
            new Case("city-crawl", "City crawl at 15 km/h, A/C on", 15.0 * KMH, 0.01, true),
            new Case("motorway", "Motorway at 110 km/h, A/C on", 110.0 * KMH, 0.0, true),
            new Case("loaded-climb", "Loaded climb, 5 % at 64 km/h, A/C on", 64.0 * KMH, 0.0498, true),
            new Case("low-range-crawl", "Crawl at 5 km/h up 12 %, A/C off", 5.0 * KMH, 0.12, false));

    private StandardCases() {}

    public static List<Case> all() {
        return ALL;
    }
}

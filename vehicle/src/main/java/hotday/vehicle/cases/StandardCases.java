package hotday.vehicle.cases;

import java.util.List;

/** The cases shipped with the program; each file beside this class says where its numbers come from. */
public final class StandardCases {
    private static final List<Case> ALL = List.of(
            CaseFile.shipped("hot-idle.yaml"),
            CaseFile.shipped("city-crawl.yaml"),
            CaseFile.shipped("motorway.yaml"),
            CaseFile.shipped("loaded-climb.yaml"),
            CaseFile.shipped("low-range-crawl.yaml"),
            CaseFile.shipped("drop-to-idle.yaml"),
            CaseFile.shipped("key-off-soak.yaml"),
            CaseFile.shipped("city-trace.yaml"),
            CaseFile.shipped("cold-morning.yaml"));

    private StandardCases() {}

    /** All of them, the steady ones first. */
    public static List<Case> all() {
        return ALL;
    }

    /** Those without a course in time. */
    public static List<Case> steady() {
        return ALL.stream().filter(Case::steady).toList();
    }
}

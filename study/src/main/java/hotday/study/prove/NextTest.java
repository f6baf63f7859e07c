package hotday.study.prove;

import hotday.core.finding.Sentence;

/**
 * A step that may be driven next, and what it is expected to tell about the worst ceiling.
 *
 * @param id for programs
 * @param title for people
 * @param duration s
 * @param kase whose ceiling is meant
 * @param narrowing expected share by which its 90 % interval narrows, 0..1
 * @param caution what to heed
 */
public record NextTest(String id, String title, double duration, String kase, double narrowing, Sentence caution) {}

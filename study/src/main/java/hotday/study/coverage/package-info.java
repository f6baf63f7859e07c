/**
 * How far a proof can be trusted: many virtual cars whose truth is known are commissioned on a mild day and proven, and what was said is laid beside what
 * they really stand. Start with {@link hotday.study.coverage.CoverageStudy}.
 */
package hotday.study.coverage;

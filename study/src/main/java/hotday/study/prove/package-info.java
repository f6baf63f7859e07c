/**
 * From a recorded run to the hot day: prepare recordings, fit the unknowns of a build to them, predict further runs,
 * carry the doubt to the ambient ceilings. Start with {@link hotday.study.prove.Prove}; what comes out is a
 * {@link hotday.study.prove.Proof}. No reading or writing of files here.
 */
package hotday.study.prove;

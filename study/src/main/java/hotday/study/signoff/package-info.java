/** The sign-off document. Start with {@link hotday.study.signoff.SignOffPdf}; layout in {@code Pages}, charts in {@code hotday.study.picture}. */
package hotday.study.signoff;

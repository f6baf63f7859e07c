/**
 * Pictures drawn once and shown as SVG or PDF: {@link hotday.study.picture.Canvas} and what is drawn on it. Values arrive in the units to be shown; no
 * engineering here.
 */
package hotday.study.picture;

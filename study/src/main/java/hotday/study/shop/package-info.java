/**
 * A shop folder as people work in it: its builds and where each stands, and one build sheet on the bench, tried with other values and
 * saved.
 */
package hotday.study.shop;

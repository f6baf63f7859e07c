/**
 * A shop folder as people work in it: its builds and where each stands, and one build sheet on the bench, tried with other values and
 * saved; its recordings and their channel maps ({@link hotday.study.shop.Runs}), the last proof of every build ({@link hotday.study.shop.Proofs}).
 */
package hotday.study.shop;

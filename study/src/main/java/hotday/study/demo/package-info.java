/** The invented shop: its files, and virtual cars whose truth is known. Start with {@link hotday.study.demo.DemoShop}. */
package hotday.study.demo;

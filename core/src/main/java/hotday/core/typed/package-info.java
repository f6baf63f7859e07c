/**
 * What people typed into YAML files, with line and column of everything. Start with {@link hotday.core.typed.TypedFile}.
 * What the keys mean is known elsewhere.
 */
package hotday.core.typed;

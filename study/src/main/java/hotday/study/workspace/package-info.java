/** The only package that writes to disk: whole files or none ({@link hotday.study.workspace.AtomicFile}). */
package hotday.study.workspace;

/** Door for people at a browser: a server on this machine alone, the page and what it asks. Nothing is worked out here. */
package hotday.app.web;

/**
 * The page: the whole job in a browser, served on this machine. {@link turnalike.web.Site} wires it: the kit that every page uses, and one
 * room per group of pages, with a template folder of the same name. Thin: pictures come from {@code drawing}, edits from {@code job.edit},
 * figures from {@code job}.
 */
@NullMarked
package turnalike.web;

import org.jspecify.annotations.NullMarked;

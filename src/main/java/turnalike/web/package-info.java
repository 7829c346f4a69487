/**
 * The page: the whole job in a browser, served on this machine. {@link turnalike.web.Site} is the server, {@link turnalike.web.Gate} what
 * keeps strangers out, {@link turnalike.web.Pages} the templates, {@link turnalike.web.Assets} what else is served. A group of pages is a
 * {@link turnalike.web.Feature} in a package of its own with a template folder of the same name. Thin: pictures come from
 * {@code drawing}, edits from {@code job.edit}, figures from {@code job}.
 */
@NullMarked
package turnalike.web;

import org.jspecify.annotations.NullMarked;

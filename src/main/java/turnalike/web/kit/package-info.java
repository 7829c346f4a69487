/**
 * What every group of pages is made of: {@link turnalike.web.kit.Gate} keeps strangers out, {@link turnalike.web.kit.Pages} are the
 * templates, {@link turnalike.web.kit.Assets} what else is served, {@link turnalike.web.kit.RequestInput} what a request asks for. A group of
 * pages is a {@link turnalike.web.kit.Feature}.
 */
@NullMarked
package turnalike.web.kit;

import org.jspecify.annotations.NullMarked;

/**
 * What is said, in another language than the code's: a catalogue of English words and their translation, read where words reach somebody,
 * at the page and on paper. Everything below speaks English; what it says is never parsed again.
 */
@NullMarked
package turnalike.language;

import org.jspecify.annotations.NullMarked;

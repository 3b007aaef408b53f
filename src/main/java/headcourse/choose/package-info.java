/**
 * What there is to choose from: every arrangement of an opening's head that keeps the rules, those
 * that others outdo left out, in the order that the sheet states.
 */
package headcourse.choose;

/** Flat heads of which some stones are cut already: the rest is set out around them. */
package headcourse.layout.fitted;

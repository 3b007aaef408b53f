/** What changed since the revision before. */
package headcourse.revision;

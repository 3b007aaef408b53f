/** What is about to be printed, measured and read from the marks of the pages. */
package headcourse.audit;

/**
 * Finds out what a job file must say for a head to come out that can't be set out as asked. Every
 * change that is offered was written into the file and read again, and the head was set out.
 */
package headcourse.cure;

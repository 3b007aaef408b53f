/** The local page of one job: fields to type in, the head drawn beside them, all sheets. */
package headcourse.page;

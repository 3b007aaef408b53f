/** The same where some heads are fans, in which a stone's length depends on where it stands. */
package headcourse.stock.fan;

/**
 * Parts one after another on blanks, with the least cost proved: knows lengths and rakes, no
 * stones.
 */
package headcourse.stock.cutting;

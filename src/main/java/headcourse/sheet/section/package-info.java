/** Pieces of cuts through wall and stone, for every sheet that shows one. */
package headcourse.sheet.section;

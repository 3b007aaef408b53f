/**
 * The last step of packaging: the finished jar is rewritten so that it starts faster. Lambdas and
 * the methods of records, which the virtual machine would make at run time, are made here; and
 * nothing in the jar is compressed.
 */
package headcourse.jar;

/**
 * Reads a job file: YAML to a checked job, every fault with its place. The only package that knows
 * the YAML library; it takes structure and places from it and reads every scalar itself.
 */
package headcourse.job.yaml;

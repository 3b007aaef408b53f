/** What leaves as data and as one HTML page: JSON, CSV, the job file's schema, index.html. */
package headcourse.export;

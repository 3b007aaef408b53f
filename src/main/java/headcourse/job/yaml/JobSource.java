package headcourse.job.yaml;

import headcourse.job.ShapeDef;
import java.util.List;

/**
 * What a job is read from.
 *
 * @param name the file's name as the user gave it
 * @param text its text
 * @param shapes the shapes a head can have
 * @param limits the thresholds a job can set
 * @param files the files that the job names
 */
record JobSource(
    String name,
    JobText text,
    List<ShapeDef> shapes,
    List<ShapeDef.ParamDef> limits,
    SideFiles files) {}

package turnalike.job;

import turnalike.job.read.JobReader;

/** An arrow from a feature's core up to a room that uses it, planted so that the architecture test can show it would be seen. */
public final class PlantedRoomViolation {
    private PlantedRoomViolation() {}

    public static Job.Read reachUp(String text) {
        return JobReader.read(text);
    }
}

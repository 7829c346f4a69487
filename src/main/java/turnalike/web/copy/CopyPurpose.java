package turnalike.web.copy;

/** What an original is traced for. */
public enum CopyPurpose {
    /** A new job's pattern. */
    NEW_JOB,
    /** The pattern of a job that is there. */
    PATTERN,
    /** To see how a finished piece came out. */
    CHECK
}

package hotday.signals.sample;

/** Rows of a file with a column for every signal. */
interface ColumnRows {
    /**
     * @param time s
     * @param values NaN where there is none
     * @param texts in place of values; null where there is none
     */
    void row(double time, double[] values, String[] texts);

    /** Writes what is not written yet. */
    void finish();
}

package hotday.signals.parquet;

/**
 * A column of a file to be written.
 *
 * @param name with the unit in square brackets, where it has one
 * @param text whether its cells hold text; numbers else
 */
public record ParquetColumn(String name, boolean text) {}

/**
 * Recordings as Apache Parquet files. {@link hotday.signals.parquet.ParquetTable} reads them, of any writer, through DuckDB, which is
 * loaded when the first one is opened; {@link hotday.signals.parquet.ParquetWriter} writes into a stream that somebody else opened
 * and needs nothing but the JDK. What a column means is known in {@code hotday.signals.channel} and {@code hotday.signals.sample}.
 */
package hotday.signals.parquet;

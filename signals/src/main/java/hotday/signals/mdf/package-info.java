/**
 * Recordings in the binary layout ASAM MDF 4: start with {@link hotday.signals.mdf.MdfLog}. A file is blocks that point at
 * each other ({@code BlockFile}); {@code Structure} walks from the head to groups and channels, {@code DataChain} and
 * {@code DataStream} make of scattered and packed data blocks one row of bytes, {@code RecordCursor} cuts records from it,
 * {@code Field} and {@code Conversion} make values of their bits. Memory does not grow with the file. What is broken becomes
 * a finding with block and byte; what is whole before it is read. Layouts after ASAM MDF 4.1 and 4.2, from memory of the
 * standard.
 */
package hotday.signals.mdf;

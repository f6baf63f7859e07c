/**
 * What cars say at the diagnostic connector: values of service 01, texts of service 09 (SAE J1979) and answers to a
 * workshop's requests. Start with {@link hotday.signals.obd.ObdDecoder}. Which values are known stands in the table
 * {@code pids.csv} beside {@link hotday.signals.obd.PidTable}. Nothing here asks a vehicle anything.
 */
package hotday.signals.obd;

/**
 * What becomes of decoded samples: {@link hotday.signals.sample.SampleStatistics} sums them up,
 * {@link hotday.signals.sample.SampleRows}, {@link hotday.signals.sample.ParquetSamples} and
 * {@link hotday.signals.sample.SampleColumns} write them into a stream that somebody else opened. Who decoded them is not known here.
 */
package hotday.signals.sample;

/**
 * What is wrong with a car, told from the recording of its commissioning run: draws of sound cars and of cars with one fault are driven by the recorded
 * inputs, and what was measured is laid beside both. Start with {@link hotday.study.findings.Commissioning}; how far it can be trusted
 * {@link hotday.study.findings.FaultStudy} tries on virtual cars.
 */
package hotday.study.findings;

/**
 * Refrigerant properties as somebody asks for them: one state ({@link hotday.study.property.Known}), a file of states
 * ({@link hotday.study.property.PointsFile}), a pressure-temperature chart ({@link hotday.study.property.SaturationChart}).
 * The equations themselves are in {@code hotday.physics.refrigerant}.
 */
package hotday.study.property;

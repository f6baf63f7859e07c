/**
 * What a builder asks a sheet before metal is cut: what another value would change ({@link hotday.study.predict.WhatIf}), which
 * values matter ({@link hotday.study.predict.Sensitivity}), how hot it may get over speed and grade ({@link
 * hotday.study.predict.RoadMap}). Ceilings themselves come from {@code hotday.vehicle.cases}.
 */
package hotday.study.predict;

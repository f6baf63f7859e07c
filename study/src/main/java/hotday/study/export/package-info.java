/**
 * What the calibrator takes to a controller: translation, fan controller and compressor rules as C99 in whole numbers, with
 * vectors that show that they do the same there. Start with {@link hotday.study.export.GatewayExport} and
 * {@link hotday.study.export.ControllerExport}. What the code does is defined in docs/network.md and docs/controller.md.
 */
package hotday.study.export;

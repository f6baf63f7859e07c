/**
 * From the road to the crank. {@link hotday.vehicle.drive.Drive}: one efficiency for everything between, as recorded runs are
 * read. {@link hotday.vehicle.drive.DriveTrain}: gears, lock-up and torque converter one by one, with the heat each makes.
 */
package hotday.vehicle.drive;

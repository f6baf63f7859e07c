package hotday.physics.cycle;

/** How much refrigerant is in the system. The shifts are from memory; there is no public law for them. */
public enum Charge {
    /** The evaporator is starved and the condenser holds no liquid. */
    LOW(12.0, 0.0, 0.0),
    RIGHT(0.0, 1.0, 0.0),
    /** Liquid backs up into the condenser. */
    HIGH(0.0, 1.0, 0.15);

    private final double addedSuperheat;
    private final double keptShare;
    private final double backedUp;

    Charge(double addedSuperheat, double keptShare, double backedUp) {
        this.addedSuperheat = addedSuperheat;
        this.keptShare = keptShare;
        this.backedUp = backedUp;
    }

    /** Superheat, K, where the right charge has this one. */
    double superheat(double right) {
        return right + addedSuperheat;
    }

    /** Flooded share of the condenser's face where the right charge has this one. */
    double liquidShare(double right) {
        return keptShare * right + backedUp;
    }
}

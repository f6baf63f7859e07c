package hotday.study.signoff;

import java.util.List;

/** What can hurt somebody at this work; shown in every sign-off. */
final class Cautions {
    static final List<String> ALL = List.of(
            "Local codes, the parts makers' instructions and licensed practice come before anything written here.",
            "An electric fan may start without warning, also with the key off. Unplug it before hands, hair, cloth or tools come near.",
            "Never open a hot cap: let the hose go soft, cover it, release it slowly. Coolant is poisonous; collect it.",
            "Refrigerant is handled only by people with the certificate their country asks for, with approved equipment, and is never vented. R-1234yf burns.",
            "Keep clear of belts and pulleys. Run engines only with the exhaust led outside and a carbon-monoxide alarm.",
            "Fuse every positive lead close to its source and to suit the cable. Disconnect the battery's negative first.",
            "A road test obeys the law: a driver who drives, a passenger who reads. A public grade is no test track.",
            "A swapped engine must keep its emission parts working and pass the local inspection.");

    private Cautions() {}
}

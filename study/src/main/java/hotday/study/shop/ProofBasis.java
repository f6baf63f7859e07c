package hotday.study.shop;

import java.util.Map;

/**
 * What a proof stands on; another one makes it an old proof.
 *
 * @param sheet version of the build sheet
 * @param beside version of parts and cases of the shop
 * @param runs version of every recording with its map, by name
 */
record ProofBasis(String sheet, String beside, Map<String, String> runs) {
    ProofBasis {
        runs = Map.copyOf(runs);
    }
}

package quoin.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * What was chosen for the job. Empty texts where nothing was. Immutable and safe for use by many threads.
 *
 * @param rulebookId the rulebook's id
 * @param rulebookVersion its version; empty for the newest in force
 * @param rulebookDigest the digest it must have; empty for any
 * @param partsId the parts list's id
 * @param parts every chosen part by what it is, such as {@code fabric} or {@code drive}, in the order of the document
 * @param rollerAt the side the roller is at
 * @param rollerDrive the side its drive is on
 * @param cableLeaves the side where the cable leaves
 */
public record Choices(
        String rulebookId,
        String rulebookVersion,
        String rulebookDigest,
        String partsId,
        Map<String, String> parts,
        String rollerAt,
        String rollerDrive,
        String cableLeaves) {
    /** Copies the map. */
    public Choices {
        if (rulebookId.isEmpty()) {
            throw new IllegalArgumentException("rulebook must have an id, got an empty text");
        }
        Objects.requireNonNull(rulebookVersion, "rulebookVersion");
        Objects.requireNonNull(rulebookDigest, "rulebookDigest");
        Objects.requireNonNull(partsId, "partsId");
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        Objects.requireNonNull(rollerAt, "rollerAt");
        Objects.requireNonNull(rollerDrive, "rollerDrive");
        Objects.requireNonNull(cableLeaves, "cableLeaves");
    }

    /**
     * Only the rulebook is chosen.
     *
     * @param id the rulebook's id
     * @return the choices
     */
    public static Choices rulebook(String id) {
        return new Choices(id, "", "", "", Map.of(), "", "", "");
    }
}

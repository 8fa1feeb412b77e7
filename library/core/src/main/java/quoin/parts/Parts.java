package quoin.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A versioned list of parts.
 *
 * <p>Immutable and safe for use by many threads.
 */
public final class Parts {
    /** No parts at all. */
    public static final Parts NONE = new Parts("", "", List.of(), List.of(), List.of(), List.of());

    /** The kinds of part a job can choose, as documents write them. */
    public static final List<String> CHOICES = List.of("fabric", "drive", "profile", "fastener");

    private final String id;
    private final String version;
    private final Map<String, Fabric> fabrics;
    private final Map<String, Drive> drives;
    private final Map<String, Profile> profiles;
    private final Map<String, Fastener> fasteners;

    private Parts(
            String id,
            String version,
            List<Fabric> fabrics,
            List<Drive> drives,
            List<Profile> profiles,
            List<Fastener> fasteners) {
        this.id = id;
        this.version = version;
        this.fabrics = Ids.index(fabrics, Fabric::id, "fabric");
        this.drives = Ids.index(drives, Drive::id, "drive");
        this.profiles = Ids.index(profiles, Profile::id, "profile");
        this.fasteners = Ids.index(fasteners, Fastener::id, "fastener");
    }

    /**
     * A list of parts.
     *
     * @param id its name
     * @param version its version
     * @param fabrics the fabrics
     * @param drives the drives
     * @param profiles the profiles
     * @param fasteners the fasteners
     * @return the list
     * @throws IllegalArgumentException if a name is empty, or one is listed twice
     */
    public static Parts of(
            String id,
            String version,
            List<Fabric> fabrics,
            List<Drive> drives,
            List<Profile> profiles,
            List<Fastener> fasteners) {
        Ids.require(id, "parts list");
        Ids.require(version, "version of parts list " + id);
        return new Parts(id, version, fabrics, drives, profiles, fasteners);
    }

    /** {@return its name; empty for no parts at all} */
    public String id() {
        return id;
    }

    /** {@return its version; empty for no parts at all} */
    public String version() {
        return version;
    }

    /** {@return the fabrics by name, in their order} */
    public Map<String, Fabric> fabrics() {
        return fabrics;
    }

    /** {@return the drives by name, in their order} */
    public Map<String, Drive> drives() {
        return drives;
    }

    /** {@return the profiles by name, in their order} */
    public Map<String, Profile> profiles() {
        return profiles;
    }

    /** {@return the fasteners by name, in their order} */
    public Map<String, Fastener> fasteners() {
        return fasteners;
    }

    /**
     * The names of the parts of one kind.
     *
     * @param choice one of {@link #CHOICES}
     * @return the names, in their order
     * @throws IllegalArgumentException if there is no such kind
     */
    public Set<String> names(String choice) {
        return switch (choice) {
            case "fabric" -> fabrics.keySet();
            case "drive" -> drives.keySet();
            case "profile" -> profiles.keySet();
            case "fastener" -> fasteners.keySet();
            default -> throw new IllegalArgumentException("choice must be one of " + CHOICES + ", got " + choice);
        };
    }

    /**
     * The numbers that were declared of a part.
     *
     * @param choice one of {@link #CHOICES}
     * @param id the part's name
     * @return the known ones; none where there is no such part
     * @throws IllegalArgumentException if there is no such kind
     */
    public List<Declared> declared(String choice, String id) {
        if (!names(choice).contains(id)) {
            return List.of();
        }
        List<Declared> all = new ArrayList<>();
        Fabric fabric = fabrics.get(id);
        Drive drive = drives.get(id);
        Profile profile = profiles.get(id);
        Fastener fastener = fasteners.get(id);
        if (choice.equals("fabric") && fabric != null) {
            all.addAll(List.of(fabric.areaMass(), fabric.thickness(), fabric.rollWidth()));
        } else if (choice.equals("drive") && drive != null) {
            all.addAll(List.of(drive.torque(), drive.speed(), drive.ratedTime(), drive.turns()));
            all.addAll(List.of(drive.voltage(), drive.current(), drive.ambient()));
        } else if (choice.equals("profile") && profile != null) {
            all.addAll(List.of(profile.lineMass(), profile.expansion()));
            all.addAll(profile.stock());
        } else if (choice.equals("fastener") && fastener != null) {
            all.addAll(List.of(fastener.thread(), fastener.length(), fastener.hole(), fastener.countersink()));
            fastener.pulls().forEach(pull -> all.addAll(List.of(pull.value(), pull.depth())));
        }
        return all.stream().filter(Declared::isKnown).toList();
    }

    /** {@return every field in a fixed order, parts sorted by name: the text that the digest is of} */
    public String canonicalText() {
        return PartsText.of(this).toString();
    }

    /** {@return {@code sha256:} and the SHA-256 of {@link #canonicalText()}, lower-case hexadecimal} */
    public String digest() {
        return PartsText.of(this).digest();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Parts that
                && id.equals(that.id)
                && version.equals(that.version)
                && fabrics.equals(that.fabrics)
                && drives.equals(that.drives)
                && profiles.equals(that.profiles)
                && fasteners.equals(that.fasteners);
    }

    @Override
    public int hashCode() {
        return id.hashCode() * 31 + version.hashCode();
    }

    @Override
    public String toString() {
        return id + " " + version;
    }
}

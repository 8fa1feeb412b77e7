package quoin.parts;

import java.util.TreeMap;

/** The canonical text of a list of parts: every field, parts sorted by name. */
final class PartsText {
    private PartsText() {}

    static CanonicalText of(Parts parts) {
        CanonicalText text =
                CanonicalText.of("quoin-parts/1").text("id", parts.id()).text("version", parts.version());
        new TreeMap<>(parts.fabrics()).values().forEach(fabric -> fabric(text, fabric));
        new TreeMap<>(parts.drives()).values().forEach(drive -> drive(text, drive));
        new TreeMap<>(parts.profiles()).values().forEach(profile -> profile(text, profile));
        new TreeMap<>(parts.fasteners()).values().forEach(fastener -> fastener(text, fastener));
        return text;
    }

    private static void fabric(CanonicalText text, Fabric fabric) {
        text.open("fabric")
                .text("id", fabric.id())
                .declared("areaMass", fabric.areaMass())
                .declared("thickness", fabric.thickness())
                .declared("rollWidth", fabric.rollWidth())
                .text("mayTurn", Boolean.toString(fabric.mayTurn()))
                .close();
    }

    private static void drive(CanonicalText text, Drive drive) {
        text.open("drive")
                .text("id", drive.id())
                .declared("torque", drive.torque())
                .declared("speed", drive.speed())
                .declared("ratedTime", drive.ratedTime())
                .declared("turns", drive.turns())
                .declared("voltage", drive.voltage())
                .declared("current", drive.current())
                .declared("ambient", drive.ambient())
                .close();
    }

    private static void profile(CanonicalText text, Profile profile) {
        text.open("profile").text("id", profile.id()).declared("lineMass", profile.lineMass());
        profile.stock().forEach(length -> text.declared("stock", length));
        text.declared("expansion", profile.expansion()).close();
    }

    private static void fastener(CanonicalText text, Fastener fastener) {
        text.open("fastener")
                .text("id", fastener.id())
                .declared("thread", fastener.thread())
                .declared("length", fastener.length())
                .declared("hole", fastener.hole())
                .declared("countersink", fastener.countersink());
        for (Pull pull : fastener.pulls()) {
            text.open("pull")
                    .declared("value", pull.value())
                    .text("in", pull.in().text())
                    .declared("depth", pull.depth())
                    .close();
        }
        text.close();
    }
}

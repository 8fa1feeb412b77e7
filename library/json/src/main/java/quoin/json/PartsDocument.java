package quoin.json;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quoin.measure.Dimension;
import quoin.parts.Declared;
import quoin.parts.Drive;
import quoin.parts.Fabric;
import quoin.parts.Fastener;
import quoin.parts.Parts;
import quoin.parts.Profile;
import quoin.parts.Pull;
import quoin.rulebook.Lint;

/** A parts list as a document: {@code quoin-parts/1}. */
public final class PartsDocument {
    /** The name of the format. */
    public static final String FORMAT = "quoin-parts/1";

    private PartsDocument() {}

    /**
     * Reads a parts list.
     *
     * @param json the text in UTF-8
     * @return the parts, or every problem of the text
     */
    public static Read<Parts> read(byte[] json) {
        return Documents.read(json, PartsDocument::parts, Lint::problems);
    }

    /**
     * Reads a parts list, 8 MB at most.
     *
     * @param json the text in UTF-8
     * @return the parts, or every problem of the text
     * @throws IOException if the stream cannot be read
     */
    public static Read<Parts> read(InputStream json) throws IOException {
        return read(Tree.bytes(json));
    }

    private static Optional<Parts> parts(Fields in) {
        in.format(FORMAT);
        String id = in.id("id");
        String version = in.words("version", "a version such as 1.0.0");
        List<Fabric> fabrics =
                List.copyOf(in.named("fabrics", PartsDocument::fabric).values());
        List<Drive> drives =
                List.copyOf(in.named("drives", PartsDocument::drive).values());
        List<Profile> profiles =
                List.copyOf(in.named("profiles", PartsDocument::profile).values());
        List<Fastener> fasteners =
                List.copyOf(in.named("fasteners", PartsDocument::fastener).values());
        if (id.isEmpty() || version.isEmpty()) {
            return Optional.empty();
        }
        return in.build(() -> Parts.of(id, version, fabrics, drives, profiles, fasteners));
    }

    private static Optional<Fabric> fabric(String id, Fields in) {
        Declared mass = Common.declared(in, "areaMass", Dimension.AREA_MASS);
        Declared thickness = Common.declared(in, "thickness", Dimension.LENGTH);
        Declared width = Common.declared(in, "rollWidth", Dimension.LENGTH);
        boolean mayTurn = in.flag("mayTurn");
        return id.isEmpty() ? Optional.empty() : in.build(() -> new Fabric(id, mass, thickness, width, mayTurn));
    }

    private static Optional<Drive> drive(String id, Fields in) {
        Declared torque = Common.declared(in, "torque", Dimension.TORQUE);
        Declared speed = Common.declared(in, "speed", Dimension.TURNING_SPEED);
        Declared time = Common.declared(in, "ratedTime", Dimension.TIME);
        Declared turns = Common.declared(in, "turns", Dimension.RATIO);
        Declared voltage = Common.declared(in, "voltage", Dimension.VOLTAGE);
        Declared current = Common.declared(in, "current", Dimension.CURRENT);
        Declared ambient = Common.declared(in, "ambient", Dimension.TEMPERATURE);
        return id.isEmpty()
                ? Optional.empty()
                : in.build(() -> new Drive(id, torque, speed, time, turns, voltage, current, ambient));
    }

    private static Optional<Profile> profile(String id, Fields in) {
        Declared mass = Common.declared(in, "lineMass", Dimension.LINE_MASS);
        List<Declared> stock = new ArrayList<>();
        for (Node item : in.list("stock")) {
            Common.declared(in, item, Dimension.LENGTH).ifPresent(stock::add);
        }
        Declared expansion = Common.declared(in, "expansion", Dimension.PER_KELVIN);
        return id.isEmpty() ? Optional.empty() : in.build(() -> new Profile(id, mass, stock, expansion));
    }

    private static Optional<Fastener> fastener(String id, Fields in) {
        Declared thread = Common.declared(in, "thread", Dimension.LENGTH);
        Declared length = Common.declared(in, "length", Dimension.LENGTH);
        Declared hole = Common.declared(in, "hole", Dimension.LENGTH);
        Declared sink = Common.declared(in, "countersink", Dimension.LENGTH);
        List<Pull> pulls = in.object("pull", Common::pull).map(List::of).orElse(List.of());
        return id.isEmpty() ? Optional.empty() : in.build(() -> new Fastener(id, thread, length, hole, sink, pulls));
    }

    /**
     * Writes a parts list.
     *
     * @param parts the parts
     * @return the text, keys in a fixed order, ending with a line feed
     */
    public static String write(Parts parts) {
        Out out = Out.pages();
        out.start();
        out.field("format", FORMAT);
        out.field("id", parts.id());
        out.field("version", parts.version());
        out.objects("fabrics", parts.fabrics(), PartsDocument::write);
        out.objects("drives", parts.drives(), PartsDocument::write);
        out.objects("profiles", parts.profiles(), PartsDocument::write);
        out.objects("fasteners", parts.fasteners(), PartsDocument::write);
        out.end();
        return out.text() + "\n";
    }

    private static void write(Out out, Fabric fabric) {
        out.declared("areaMass", fabric.areaMass());
        out.declared("thickness", fabric.thickness());
        out.declared("rollWidth", fabric.rollWidth());
        out.field("mayTurn", fabric.mayTurn());
    }

    private static void write(Out out, Drive drive) {
        out.declared("torque", drive.torque());
        out.declared("speed", drive.speed());
        out.declared("ratedTime", drive.ratedTime());
        out.declared("turns", drive.turns());
        out.declared("voltage", drive.voltage());
        out.declared("current", drive.current());
        out.declared("ambient", drive.ambient());
    }

    private static void write(Out out, Profile profile) {
        out.declared("lineMass", profile.lineMass());
        if (!profile.stock().isEmpty()) {
            out.startArray("stock");
            profile.stock().forEach(out::declared);
            out.endArray();
        }
        out.declared("expansion", profile.expansion());
    }

    private static void write(Out out, Fastener fastener) {
        out.declared("thread", fastener.thread());
        out.declared("length", fastener.length());
        out.declared("hole", fastener.hole());
        out.declared("countersink", fastener.countersink());
        if (fastener.pulls().size() > 1) {
            throw new IllegalArgumentException("a fastener must have one pull or none in a document, got "
                    + fastener.pulls().size() + " for " + fastener.id());
        }
        for (Pull pull : fastener.pulls()) {
            out.startObject("pull");
            out.pull(pull);
            out.end();
        }
    }
}

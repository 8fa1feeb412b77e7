/** Jobs, rulebooks, parts and outcomes as JSON documents, with the place of every problem. */
module quoin.json {
    requires transitive quoin;
    requires tools.jackson.core;

    exports quoin.json;
}

/**
 * Descriptions of networks (DBC files) and what they make of a frame. Start with {@link hotday.signals.dbc.DbcFile},
 * which reads a file, keeps every statement of it in order and writes it back; its
 * {@link hotday.signals.dbc.Message messages} compile into a {@link hotday.signals.dbc.MessageDecoder}. Which files are
 * read, what is done about faulty ones: docs/decode.md. Recordings of frames are read elsewhere.
 */
package hotday.signals.dbc;

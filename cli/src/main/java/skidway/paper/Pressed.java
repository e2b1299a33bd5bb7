package skidway.paper;

import java.util.List;

/**
 * A finished PDF.
 *
 * @param pages of all copies together
 * @param remarks letters that no font has and where they stand, a sentence each
 */
@SuppressWarnings("ArrayRecordComponent")
public record Pressed(byte[] bytes, int pages, List<String> remarks) {}

// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.dsl.export.glb;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import bandwright.dsl.view.Json;

/**
 * The pieces of a file as they are gathered: its tree, and the bytes that the tree speaks of. Layout and numbers: glTF 2.0 specification; Khronos
 * Group; 2021; sections 3.6 (binary data), 4 (GLB file format).
 */
final class GlbFile {
    private static final int BYTE = 5120;
    private static final int SHORT = 5122;
    private static final int FLOAT = 5126;
    private static final int UNSIGNED_SHORT = 5123;
    private static final int UNSIGNED_INT = 5125;
    private static final int VERTICES = 34962;
    private static final int INDICES = 34963;

    /** One less than all sixteen bits: the last would mean that a strip is begun anew. */
    private static final int MOST_SHORT = 65534;

    private static final int MAGIC = 0x46546C67;
    private static final int JSON_CHUNK = 0x4E4F534A;
    private static final int BINARY_CHUNK = 0x004E4942;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final List<Object> views = new ArrayList<>();
    private final List<Object> accessors = new ArrayList<>();

    /** @return the number of the accessor */
    int vectors(float[] values, boolean withBounds) {
        byte[] packed = new byte[4 * values.length];
        ByteBuffer buffer = over(packed);
        float[] least = {Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY};
        float[] most = {Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY};
        for (int i = 0; i < values.length; i++) {
            // No negative zero: it is the same place and other bytes.
            float value = values[i] == 0 ? 0 : values[i];
            buffer.putFloat(value);
            least[i % 3] = Math.min(least[i % 3], value);
            most[i % 3] = Math.max(most[i % 3], value);
        }
        Map<String, Object> accessor = accessor(view(packed, VERTICES, 0), FLOAT, values.length / 3, "VEC3");
        if (withBounds) {
            accessor.put("min", exact(least));
            accessor.put("max", exact(most));
        }
        return add(accessor);
    }

    /** Places as whole numbers of steps. */
    int steps(float[] values, double step) {
        int count = values.length / 3;
        // Every vertex begins at a multiple of four bytes.
        byte[] packed = new byte[8 * count];
        ByteBuffer buffer = over(packed);
        int[] least = {Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE};
        int[] most = {Integer.MIN_VALUE, Integer.MIN_VALUE, Integer.MIN_VALUE};
        for (int i = 0; i < values.length; i++) {
            int steps = (int) Math.round(values[i] / step);
            buffer.putShort(8 * (i / 3) + 2 * (i % 3), (short) steps);
            least[i % 3] = Math.min(least[i % 3], steps);
            most[i % 3] = Math.max(most[i % 3], steps);
        }
        Map<String, Object> accessor = accessor(view(packed, VERTICES, 8), SHORT, count, "VEC3");
        accessor.put("min", List.of(least[0], least[1], least[2]));
        accessor.put("max", List.of(most[0], most[1], most[2]));
        return add(accessor);
    }

    /** Directions of length one, each of their numbers in eight bits. */
    int directions(float[] values) {
        int count = values.length / 3;
        byte[] packed = new byte[4 * count];
        for (int i = 0; i < values.length; i++) {
            packed[4 * (i / 3) + i % 3] = (byte) Math.round(values[i] * Byte.MAX_VALUE);
        }
        Map<String, Object> accessor = accessor(view(packed, VERTICES, 4), BYTE, count, "VEC3");
        accessor.put("normalized", true);
        return add(accessor);
    }

    int indices(int[] values, int vertices) {
        boolean small = vertices - 1 <= MOST_SHORT;
        byte[] packed = new byte[(small ? 2 : 4) * values.length];
        ByteBuffer buffer = over(packed);
        for (int value : values) {
            if (small) {
                buffer.putShort((short) value);
            } else {
                buffer.putInt(value);
            }
        }
        return add(accessor(view(packed, INDICES, 0), small ? UNSIGNED_SHORT : UNSIGNED_INT, values.length, "SCALAR"));
    }

    private static List<Object> exact(float[] values) {
        return List.of(Json.exact(values[0]), Json.exact(values[1]), Json.exact(values[2]));
    }

    private int add(Map<String, Object> accessor) {
        accessors.add(accessor);
        return accessors.size() - 1;
    }

    private static Map<String, Object> accessor(int view, int component, int count, String type) {
        Map<String, Object> accessor = new LinkedHashMap<>();
        accessor.put("bufferView", view);
        accessor.put("componentType", component);
        accessor.put("count", count);
        accessor.put("type", type);
        return accessor;
    }

    /** @param stride bytes from one vertex to the next; 0 where they follow each other */
    private int view(byte[] packed, int target, int stride) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("buffer", 0);
        view.put("byteOffset", bytes.size());
        view.put("byteLength", packed.length);
        if (stride > 0) {
            view.put("byteStride", stride);
        }
        view.put("target", target);
        views.add(view);
        bytes.writeBytes(packed);
        pad(bytes, 0);
        return views.size() - 1;
    }

    /** The whole file: what is gathered here is added to the tree. */
    byte[] write(Map<String, Object> tree) {
        tree.put("accessors", accessors);
        tree.put("bufferViews", views);
        tree.put("buffers", List.of(Map.of("byteLength", bytes.size())));
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        json.writeBytes(Json.write(tree).getBytes(StandardCharsets.UTF_8));
        pad(json, ' ');
        byte[] whole = new byte[12 + 8 + json.size() + 8 + bytes.size()];
        ByteBuffer file = over(whole);
        file.putInt(MAGIC).putInt(2).putInt(whole.length);
        file.putInt(json.size()).putInt(JSON_CHUNK).put(json.toByteArray());
        file.putInt(bytes.size()).putInt(BINARY_CHUNK).put(bytes.toByteArray());
        return whole;
    }

    private static void pad(ByteArrayOutputStream stream, int filler) {
        while (stream.size() % 4 != 0) {
            stream.write(filler);
        }
    }

    private static ByteBuffer over(byte[] array) {
        return ByteBuffer.wrap(array).order(ByteOrder.LITTLE_ENDIAN);
    }
}

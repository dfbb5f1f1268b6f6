// Bandwright. SPDX-License-Identifier: Apache-2.0
package bandwright.kernel.cell.java;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Loads what cells are compiled to and the jars they use, with steps at which a cell can be stopped. */
final class CellLoader extends URLClassLoader {
    private final Map<String, byte[]> declared = new HashMap<>();
    /** Those that hold variables of cells, in the order in which they were loaded. */
    private final List<Class<?>> holders = new ArrayList<>();

    CellLoader(ClassLoader parent) {
        super("cells", new URL[0], parent);
    }

    synchronized void declare(String name, byte[] classFile) {
        declared.put(name, classFile);
    }

    void add(Path path) {
        try {
            addURL(path.toUri().toURL());
        } catch (MalformedURLException failure) {
            throw new IllegalArgumentException("no path of this machine: " + path, failure);
        }
    }

    @Override
    protected synchronized Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] own = declared.get(name);
        byte[] classFile = StopSteps.into(own == null ? read(name) : own);
        Class<?> loaded = defineClass(name, classFile, 0, classFile.length);
        if (own != null) {
            holders.add(loaded);
        }
        return loaded;
    }

    private byte[] read(String name) throws ClassNotFoundException {
        URL found = findResource(name.replace('.', '/') + ".class");
        if (found == null) {
            throw new ClassNotFoundException(name);
        }
        try (InputStream stream = found.openStream()) {
            return stream.readAllBytes();
        } catch (IOException failure) {
            throw new ClassNotFoundException(name, failure);
        }
    }

    /** How many classes of cells are loaded. */
    synchronized int count() {
        return holders.size();
    }

    /** Lets go of what variables hold, of those classes that were loaded after so many others. */
    synchronized void clearFrom(int count) {
        holders.subList(count, holders.size()).forEach(holder -> fields(holder).forEach(field -> clear(field)));
    }

    /**
     * Lets go of what a variable held before it was made anew.
     *
     * @param gone whether it was not made anew but is no more
     */
    synchronized void clearOld(String variable, boolean gone) {
        List<Field> found = new ArrayList<>();
        for (Class<?> holder : holders) {
            fields(holder).stream()
                    .filter(field -> field.getName().equals(variable))
                    .forEach(found::add);
        }
        found.subList(0, Math.max(0, gone ? found.size() : found.size() - 1)).forEach(CellLoader::clear);
    }

    private static List<Field> fields(Class<?> holder) {
        List<Field> fields = new ArrayList<>();
        for (Field field : holder.getDeclaredFields()) {
            int modifiers = field.getModifiers();
            boolean variable = Modifier.isStatic(modifiers)
                    && !Modifier.isFinal(modifiers)
                    && !field.getType().isPrimitive();
            if (variable) {
                fields.add(field);
            }
        }
        return fields;
    }

    private static void clear(Field field) {
        try {
            field.setAccessible(true);
            field.set(null, null);
        } catch (IllegalAccessException failure) {
            throw new IllegalStateException("a variable of a cell cannot be reached: " + field, failure);
        }
    }
}
